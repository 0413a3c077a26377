import type { CountLimits, Limits } from './count-limits.js';
import type { ReducedProblem } from './normalize.js';

/** Parts of a cent that prices of pieces are counted in, so that the proof is sums of whole numbers. */
export const partsPerCent = 1_000_000;

/**
 * What a piece of each length is worth, and what a board of each kind, and any board, is worth on top of its price
 * ("rent": paid where boards are scarce, below 0 where more must be taken than one would). Valid when no board can
 * hold pieces worth more than its price and rents.
 */
export type Prices = {
  readonly worth: readonly number[];
  readonly rent: readonly number[];
  readonly boardRent: number;
};

/** Rounds linear-programming prices (in cents) to whole parts: worths down, rents up. */
export function wholePrices(
  problem: ReducedProblem,
  { worth, rent, boardRent }: Prices,
  limits: CountLimits,
): Prices {
  const rents = {
    worth: [],
    rent: rent.map((w, k) => wholeRent(w, limits.kinds[k] ?? [0, Infinity])),
    boardRent: wholeRent(boardRent, limits.total),
  };
  const single = problem.kinds.findIndex(kind => kind.single);
  const most = single < 0 ? Infinity : Math.max(0, allowance(problem, rents, single));
  return {
    ...rents,
    worth: worth.map(u => Math.min(most, Math.max(0, Math.floor(u * partsPerCent)))),
  };
}

/** A rent makes sense only where there is a limit to pay it for. */
function wholeRent(cents: number, [fewest, most]: Limits): number {
  const parts = Math.ceil(cents * partsPerCent);
  if (parts > 0) return most < Infinity ? parts : 0;
  return fewest > 0 ? parts : 0;
}

/** What a board of kind k may hold at most: its price and rents, in parts. */
export function allowance(problem: ReducedProblem, prices: Prices, k: number): number {
  const cost = (problem.kinds[k]?.cost ?? 0) * partsPerCent;
  return cost + (prices.rent[k] ?? 0) + prices.boardRent;
}

/**
 * Makes prices valid, given the most that pieces on one board of each kind are worth (undefined: no more than
 * allowed). A limited kind gets a higher rent; for the others all worths shrink in proportion.
 */
export function repairPrices(
  problem: ReducedProblem,
  prices: Prices,
  { mostWorth, limits }: { mostWorth: readonly (number | undefined)[]; limits: CountLimits },
): Prices {
  const rent = [...prices.rent];
  let share = 1;
  problem.kinds.forEach((_, k) => {
    const most = mostWorth[k];
    if (most === undefined) return;
    const allowed = allowance(problem, prices, k);
    if (most <= allowed) return;
    if ((limits.kinds[k]?.[1] ?? Infinity) < Infinity) rent[k] = (rent[k] ?? 0) + most - allowed;
    else share = Math.min(share, Math.max(0, allowed) / most);
  });
  if (share === 1) return { ...prices, rent };
  // The quotient may be a hair high; a billionth less is safely low.
  const safe = share * (1 - 1e-9);
  return { ...prices, worth: prices.worth.map(u => Math.floor(u * safe)), rent };
}

/** Parts of a cent below which no plan within the limits can cost: all pieces at their worth, less the rents. */
export function boundOf(
  problem: ReducedProblem,
  { worth, rent, boardRent }: Prices,
  limits: CountLimits,
): number {
  const pieces = problem.demands.reduce((sum, demand, i) => sum + demand * (worth[i] ?? 0), 0);
  const rents = limits.kinds.reduce((sum, one, k) => sum + rentOf(rent[k] ?? 0, one), 0);
  return pieces - rents - rentOf(boardRent, limits.total);
}

function rentOf(rent: number, [fewest, most]: Limits): number {
  if (rent === 0) return 0;
  return rent > 0 ? rent * most : rent * fewest;
}
