import type { Work } from '../work.js';
import type { Relaxation } from './column-generation.js';
import { exchangePieces, type WishOrder } from './exchange.js';
import { fewerBoards } from './fewer-boards.js';
import type { Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';

/** Part of all steps for finding fewer boards. */
const shareForBoards = 0.005;

/**
 * Improves a plan at the same cost: fewest boards first, then fewest stop settings, then one long offcut (these
 * two the other way round when the offcut is to come `first`). Looking for fewer boards gets a small share of the steps,
 * whatever the cost took; the plan is the best found, not the best possible.
 */
export function grantWishes(
  problem: ReducedProblem,
  relaxation: Relaxation,
  { uses, first }: { uses: readonly Use[]; first: WishOrder },
  work: Work,
): Use[] {
  const forBoards = { done: 0, limit: work.limit * shareForBoards };
  const few = fewerBoards(problem, relaxation, uses, forBoards);
  work.done += forBoards.done;
  return exchangePieces(problem, few, first);
}
