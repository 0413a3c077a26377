import type { ReducedProblem } from './normalize.js';
import { nextPriceSum } from './price-sums.js';

/** Fewest and most. */
export type Limits = readonly [number, number];

/** How many boards of each kind, and of all kinds together, a plan may have. */
export type CountLimits = { readonly kinds: readonly Limits[]; readonly total: Limits };

/** No limits but what there is in stock, and never more boards than pieces. */
export function stockLimits(problem: ReducedProblem): CountLimits {
  return {
    kinds: problem.kinds.map(kind => [0, kind.available] as const),
    total: [0, problem.demands.reduce((sum, demand) => sum + demand, 0)],
  };
}

/** The least cost of at least so many cents that boards within the limits can add up to. */
export function nextCost(problem: ReducedProblem, limits: CountLimits, cents: number): number {
  const prices = problem.kinds.map(({ cost }, k) => {
    const [least, most] = limits.kinds[k] ?? [0, Infinity];
    return { cost, least, most };
  });
  const [fewest, most] = limits.total;
  return nextPriceSum(cents, prices, fewest === most ? fewest : undefined);
}
