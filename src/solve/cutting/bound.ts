import type { ReducedProblem } from './normalize.js';

/** Parts of a cent that prices of pieces are counted in, so that the proof is sums of whole numbers. */
export const partsPerCent = 1_000_000;

/**
 * What a piece of each length is worth and what a board of each limited kind is worth on top of its price, in
 * whole millionths of a cent. Valid when no board can hold pieces worth more than its price and rent.
 */
export type Prices = { readonly worth: readonly number[]; readonly rent: readonly number[] };

/** Rounds linear-programming prices to whole parts: worths down, rents up. */
export function wholePrices(
  problem: ReducedProblem,
  worth: readonly number[],
  rent: readonly number[],
): Prices {
  const single = problem.kinds.find(kind => kind.single);
  const most = single === undefined ? Infinity : single.cost * partsPerCent;
  return {
    worth: worth.map(u => Math.min(most, Math.max(0, Math.floor(u * partsPerCent)))),
    rent: rent.map(w => Math.max(0, Math.ceil(w * partsPerCent))),
  };
}

/** What a board of kind k may hold at most: its price and rent, in parts. */
export function allowance(problem: ReducedProblem, prices: Prices, k: number): number {
  return (problem.kinds[k]?.cost ?? 0) * partsPerCent + (prices.rent[k] ?? 0);
}

/**
 * Makes prices valid, given the most that pieces on one board of each kind are worth (undefined: no more than
 * allowed). A limited kind gets a higher rent; for the others all worths shrink in proportion.
 */
export function repairPrices(
  problem: ReducedProblem,
  prices: Prices,
  mostWorth: readonly (number | undefined)[],
): Prices {
  const rent = [...prices.rent];
  let share = 1;
  problem.kinds.forEach((kind, k) => {
    const most = mostWorth[k];
    if (most === undefined) return;
    const allowed = allowance(problem, prices, k);
    if (most <= allowed) return;
    if (kind.available < Infinity) rent[k] = (rent[k] ?? 0) + most - allowed;
    else share = Math.min(share, allowed / most);
  });
  if (share === 1) return { worth: prices.worth, rent };
  // The quotient may be a hair high; a billionth less is safely low.
  const safe = share * (1 - 1e-9);
  return { worth: prices.worth.map(u => Math.floor(u * safe)), rent };
}

/** Parts of a cent below which no plan can cost: all pieces at their worth, less the rents. */
export function boundOf(problem: ReducedProblem, { worth, rent }: Prices): number {
  const pieces = problem.demands.reduce((sum, demand, i) => sum + demand * (worth[i] ?? 0), 0);
  return problem.kinds.reduce(
    (sum, kind, k) => (kind.available < Infinity ? sum - kind.available * (rent[k] ?? 0) : sum),
    pieces,
  );
}
