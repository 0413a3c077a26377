import { isSpent, type Work } from '../work.js';
import { type Prices, partsPerCent } from './bound.js';
import { stockLimits } from './count-limits.js';
import { costOf, type Remainder, type Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';
import { searchListed } from './search-listed.js';
import { remaining } from './solve-rest.js';

/** Where a dive stood: what it had taken, what remained, and prices that prove a bound for the remainder. */
export type Stage = {
  readonly taken: readonly Use[];
  readonly rest: Remainder;
  readonly prices: Prices;
  readonly bound: number;
};

const mostPatterns = 3000;
/** Part of all steps that one look may take. */
const shareForLook = 0.015;

/**
 * Looks for a plan of `floor` cents from the last stage of a dive that could still have led there, then from the second
 * last, the fourth last ...: the last boards are where taking one by one goes wrong. Undefined when there is none, or
 * when the remainder grows too large to search.
 */
export function finishDive(
  problem: ReducedProblem,
  stages: readonly Stage[],
  floor: number,
  work: Work,
): readonly Use[] | undefined {
  const able = stages.filter(
    ({ taken, bound }) => bound <= (floor - costOf(problem, taken)) * partsPerCent,
  );
  for (let back = 1; back <= able.length && !isSpent(work); back *= 2) {
    const { taken, rest, prices, bound } = able[able.length - back] as Stage;
    const now = remaining(problem, rest);
    const target = floor - costOf(problem, taken);
    const aim = { limits: stockLimits(now), target, floor: target };
    const share = { done: 0, limit: work.limit * shareForLook };
    const found = searchListed(now, { prices, bound, most: mostPatterns }, aim, share);
    work.done += share.done;
    if (found?.uses !== undefined) return [...taken, ...found.uses];
    if (found === undefined || !found.complete) return undefined;
  }
  return undefined;
}
