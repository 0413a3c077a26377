import { greatestCommonDivisor } from './normalize.js';

/** A price, and the fewest and most boards that may be bought at it. */
export type PriceRange = { readonly cost: number; readonly least: number; readonly most: number };

/**
 * The least sum of prices of at least `amount` that boards can add up to, judged by remainders alone: boards
 * whose number is settled make a fixed sum; the others add multiples of a common divisor. With the number of
 * all boards settled it is the divisor of the price differences that counts: 10 boards at 598 or 748 come to
 * 5980 plus a multiple of 150, so nothing costs between 6280 and 6430.
 */
export function nextPriceSum(
  amount: number,
  prices: readonly PriceRange[],
  boards?: number,
): number {
  let fixed = 0;
  let settled = 0;
  let divisor = 0;
  let first = -1;
  for (const { cost, least, most } of prices) {
    if (least === most) {
      fixed += cost * least;
      settled += least;
    } else if (boards === undefined) {
      divisor = greatestCommonDivisor(divisor, cost);
    } else if (first < 0) {
      first = cost;
    } else {
      divisor = greatestCommonDivisor(divisor, Math.abs(cost - first));
    }
  }
  if (boards !== undefined && first >= 0) fixed += first * (boards - settled);
  if (divisor === 0) return fixed >= amount ? fixed : Infinity;
  return fixed + Math.ceil((amount - fixed) / divisor) * divisor;
}
