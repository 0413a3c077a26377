import type { Relaxation } from './column-generation.js';
import { stockLimits } from './count-limits.js';
import type { Use } from './greedy.js';
import { costOf } from './greedy.js';
import { budgetAbove, listPatterns } from './list-patterns.js';
import type { ReducedProblem } from './normalize.js';
import { searchColumns } from './search-columns.js';
import type { Work } from './work.js';
import { isSpent } from './work.js';

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
  const wanted = { budget: budgetAbove(bound, cost), onlyFull: true, most: mostPatterns };
  const columns = listPatterns(problem, prices, wanted, work);
  if (columns === undefined) return uses;
  const { kinds } = stockLimits(problem);
  let best = uses;
  while (!isSpent(work)) {
    const total = [0, boardsOf(best) - 1] as const;
    const aim = { limits: { kinds, total }, target: cost, floor: cost };
    const found = searchColumns(problem, columns, aim, work);
    if (found.uses === undefined) return best;
    best = found.uses;
  }
  return best;
}

function boardsOf(uses: readonly Use[]): number {
  return uses.reduce((sum, { times }) => sum + times, 0);
}
