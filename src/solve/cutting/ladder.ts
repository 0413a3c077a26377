import type { Work } from '../work.js';
import type { Relaxation } from './column-generation.js';
import type { Columns } from './columns.js';
import { nextCost, stockLimits } from './count-limits.js';
import type { Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';
import { greatestCommonDivisor } from './normalize.js';
import { searchColumns } from './search-columns.js';
import { searchCounts } from './search-counts.js';
import { searchListed } from './search-listed.js';

/** How far the ladder got: the best plan, the cents no plan can cost less than, and the cases looked at. */
export type LadderEnd = {
  readonly uses: readonly Use[];
  readonly cost: number;
  readonly lowerBound: number;
  readonly cases: number;
};

/** A rung with more patterns than this is left to the search by board counts, which lists so few at once. */
const mostPatterns = 4000;
const fewPatterns = 1500;
/** Part of the steps left that looking among known patterns may take. */
const shareForKnown = 0.3;

/**
 * Climbs from the bound to the best plan known: on each rung, lists every pattern that a plan of at most so many
 * cents can use, and searches them. A plan found on a rung is the cheapest; an empty rung raises the bound.
 */
export function climb(
  problem: ReducedProblem,
  { program, prices, bound }: Relaxation,
  begin: LadderEnd,
  work: Work,
): LadderEnd {
  const limits = stockLimits(problem);
  let end = begin;
  let reach = Math.ceil(end.lowerBound * 0.0005);
  while (end.lowerBound < end.cost) {
    // Costs between two sums of prices do not occur, so nothing is gained by reaching there.
    const target = lastCost(problem, Math.min(end.lowerBound + reach, end.cost - 1));
    const floor = end.lowerBound;
    const aim = { limits, target, floor };
    const listed = searchListed(problem, { prices, bound, most: mostPatterns }, aim, work);
    if (listed === undefined) end = searchKnown(problem, program.columns, end, work);
    if (end.lowerBound === end.cost) return end;
    const farther = { target: end.cost - 1, floor, few: fewPatterns };
    const found = listed ?? searchCounts(problem, program.columns, farther, work);
    const cases = end.cases + found.cases;
    if (found.uses !== undefined) end = { ...end, uses: found.uses, cost: found.cost };
    const refuted = listed === undefined ? end.cost : target;
    const lowerBound = found.complete
      ? Math.min(nextCost(problem, limits, refuted + 1), end.cost)
      : end.lowerBound;
    end = { ...end, lowerBound, cases };
    if (!found.complete) return end;
    reach *= 2;
  }
  return end;
}

/** Looks for a cheaper plan among the patterns met so far; says nothing about others. */
function searchKnown(
  problem: ReducedProblem,
  columns: Columns,
  end: LadderEnd,
  work: Work,
): LadderEnd {
  const limits = stockLimits(problem);
  const aim = { limits, target: end.cost - 1, floor: end.lowerBound };
  const share = { done: 0, limit: (work.limit - work.done) * shareForKnown };
  const { uses, cost } = searchColumns(problem, columns, aim, share);
  work.done += share.done;
  return uses === undefined ? end : { ...end, uses, cost };
}

/** The greatest multiple of the common divisor of all prices that is no more than so many cents. */
function lastCost(problem: ReducedProblem, cents: number): number {
  const step = problem.kinds.reduce((gcd, kind) => greatestCommonDivisor(gcd, kind.cost), 0);
  return step === 0 ? cents : cents - (cents % step);
}
