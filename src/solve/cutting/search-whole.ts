import type { Work } from '../work.js';
import { partsPerCent } from './bound.js';
import type { Relaxation } from './column-generation.js';
import { Columns } from './columns.js';
import { nextCost, stockLimits } from './count-limits.js';
import { climb, type LadderEnd } from './ladder.js';
import { budgetAbove, listPatterns } from './list-patterns.js';
import type { ReducedProblem } from './normalize.js';
import { averageOf, otherPrices, type Proven } from './other-prices.js';
import { searchColumns } from './search-columns.js';

/** So many other prices are tried on every pattern. */
const manyPrices = 8;

/** With more patterns than this the ladder is climbed instead. */
const mostPatterns = 8000;

/**
 * For boards of one kind: looks for a plan at the bound among all patterns that it can contain, or shows that there is
 * none. A pattern has to pass for each of several prices: each alone leaves many that the others rule out.
 */
export function searchWhole(
  problem: ReducedProblem,
  relaxation: Relaxation,
  end: LadderEnd,
  work: Work,
): LadderEnd {
  const target = end.lowerBound;
  const all = [relaxation, ...otherPrices(problem, relaxation, manyPrices, work)];
  const middle = averageOf(problem, all);
  const budget = budgetAbove(middle.bound, target);
  const wanted = { budget, onlyFull: true, most: mostPatterns };
  const listed = listPatterns(problem, middle.prices, wanted, work);
  if (listed === undefined) return climb(problem, relaxation, end, work);
  const columns = thosePassing(problem, listed, all, target);
  const limits = stockLimits(problem);
  const aim = { limits, target, floor: target, refutes: true };
  const { uses, cost, complete, cases } = searchColumns(problem, columns, aim, work);
  const found = { ...end, cases: end.cases + cases };
  if (uses !== undefined) return { ...found, uses, cost };
  const lowerBound = complete ? nextCost(problem, limits, target + 1) : target;
  return { ...found, lowerBound: Math.min(lowerBound, end.cost) };
}

/** The patterns that lose no more at any of the prices than lies between its bound and the target. */
function thosePassing(
  problem: ReducedProblem,
  listed: Columns,
  all: readonly Proven[],
  target: number,
): Columns {
  const passing = new Columns();
  for (let j = 0; j < listed.size; j++) {
    const counts = listed.counts(j, problem.lengths.length);
    const cost = listed.cost[j] as number;
    const passes = all.every(({ prices, bound }) => {
      const worth = counts.reduce((sum, count, i) => sum + count * (prices.worth[i] ?? 0), 0);
      return cost * partsPerCent - worth <= budgetAbove(bound, target);
    });
    if (passes) passing.add(listed.kind[j] as number, cost, counts);
  }
  return passing;
}
