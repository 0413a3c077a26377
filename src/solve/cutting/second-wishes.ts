import type { Relaxation } from './column-generation.js';
import { exchangePieces, type WishOrder } from './exchange.js';
import { fewerBoards } from './fewer-boards.js';
import { fewerSettings } from './fewer-settings.js';
import type { Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';
import type { Work } from './work.js';

/**
 * Improves a plan at the same cost: fewest boards first, then fewest stop settings, then one long offcut (these
 * two the other way round when the offcut is to come `first`). Each wish gets a small share of the steps, whatever the cost took; the plan is the best found, not the best possible.
 */
export function grantWishes(
  problem: ReducedProblem,
  relaxation: Relaxation,
  { uses, first }: { uses: readonly Use[]; first: WishOrder },
  work: Work,
): Use[] {
  const share = (part: number): Work => ({ done: 0, limit: work.limit * part });
  const forBoards = share(0.005);
  const few = fewerBoards(problem, relaxation, uses, forBoards);
  const forSettings = share(0.007);
  const alike = fewerSettings(problem, relaxation, few, forSettings);
  work.done += forBoards.done + forSettings.done;
  return exchangePieces(problem, alike, first);
}
