import { isSpent, type Work } from '../work.js';
import type { Relaxation } from './column-generation.js';
import { stockLimits } from './count-limits.js';
import { costOf, type Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';
import { searchListed } from './search-listed.js';

const mostPatterns = 3000;

/**
 * Looks for plans of the same cost with fewer boards: one 16 ft board in place of two of 8 ft at half the price.
 * The best found within the work limit.
 */
export function fewerBoards(
  problem: ReducedProblem,
  { prices, bound }: Relaxation,
  uses: readonly Use[],
  work: Work,
): readonly Use[] {
  const cost = costOf(problem, uses);
  const { kinds } = stockLimits(problem);
  let best = uses;
  while (!isSpent(work)) {
    const boards = best.reduce((sum, { times }) => sum + times, 0);
    const limits = { kinds, total: [0, boards - 1] as const };
    const aim = { limits, target: cost, floor: cost };
    const found = searchListed(problem, { prices, bound, most: mostPatterns }, aim, work);
    if (found?.uses === undefined) return best;
    best = found.uses;
  }
  return best;
}
