import { greatestCommonDivisor } from './normalize.js';

/** A price, and the fewest and most boards that may be bought at it. */
export type PriceRange = { readonly cost: number; readonly least: number; readonly most: number };

/** Tables longer than this are not worth filling; a common divisor has to do. */
const longestTable = 3000;

/**
 * The least sum of prices of at least `amount` that boards can add up to. Boards whose number is settled make a fixed
 * sum. Of the others only what has a price is counted, as many as wanted of each, so the sum may be low but never
 * high. With the number of all boards settled it is the price differences that add up: 10 boards at 598 or 748 come
 * to 5980 plus a multiple of 150, so nothing costs between 6280 and 6430. Infinity when no sum is high enough.
 */
export function nextPriceSum(
  amount: number,
  prices: readonly PriceRange[],
  boards?: number,
): number {
  let fixed = 0;
  let settled = 0;
  let free = 0;
  const open: number[] = [];
  for (const { cost, least, most } of prices) {
    fixed += cost * least;
    settled += least;
    if (most > least && cost > 0) open.push(cost);
    if (cost === 0) free += most - least;
  }
  const rest = amount - fixed;
  if (boards === undefined) {
    if (rest <= 0) return fixed;
    return fixed + nextSum(rest, open, Infinity);
  }
  return fixed + ofSoMany(rest, open, { most: boards - settled, free });
}

/** The least sum of at least `rest` with so many boards more, of which `free` may cost nothing. */
function ofSoMany(rest: number, open: readonly number[], boards: { most: number; free: number }) {
  const cheapest = Math.min(...open);
  const steps = open.map(cost => cost - cheapest).filter(step => step > 0);
  let best = Infinity;
  for (let paid = boards.most; paid >= Math.max(0, boards.most - boards.free); paid--) {
    if (paid > 0 && open.length === 0) continue;
    const base = paid === 0 ? 0 : paid * cheapest;
    const more = rest - base;
    best = Math.min(best, more <= 0 ? base : base + nextSum(more, steps, paid));
    // The sum grows with what is paid for; below the amount nothing else is of interest.
    if (base + paid * Math.max(0, ...steps) < rest) break;
  }
  return best;
}

/** The least sum of at least `amount` of at most so many steps, each as often as wanted. */
function nextSum(amount: number, steps: readonly number[], most: number): number {
  const unit = steps.reduce(greatestCommonDivisor, 0);
  if (unit === 0) return Infinity;
  const sizes = steps.map(step => step / unit);
  const first = Math.ceil(amount / unit);
  const largest = Math.max(...sizes);
  if (first > most * largest) return Infinity;
  // Beyond the product of smallest and largest every multiple occurs (I. Schur, 1935), given enough steps.
  const every = most === Infinity && first >= Math.min(...sizes) * largest;
  if (every || sizes.length === 1 || first + largest > longestTable) return first * unit;
  const fewest = fewestSteps(sizes, first + largest);
  for (let sum = first; sum <= first + largest; sum++) {
    if ((fewest[sum] as number) <= most) return sum * unit;
  }
  return (first + largest + 1) * unit;
}

/** Tables filled before, for they are asked for again and again; what they say does not depend on it. */
const tables = new Map<string, Float64Array>();
const mostTables = 200;

/** For every sum up to `end`, the fewest steps that add up to it (Infinity: none do). */
function fewestSteps(sizes: readonly number[], end: number): Float64Array {
  const key = sizes.join();
  const known = tables.get(key);
  if (known !== undefined && known.length > end) return known;
  const done = known?.length ?? 0;
  const fewest = new Float64Array(Math.max(end + 1, 2 * done)).fill(Infinity);
  if (known !== undefined) fewest.set(known);
  fewest[0] = 0;
  for (let sum = Math.max(1, done); sum < fewest.length; sum++) {
    for (const size of sizes) {
      if (size > sum) continue;
      const count = (fewest[sum - size] as number) + 1;
      if (count < (fewest[sum] as number)) fewest[sum] = count;
    }
  }
  if (tables.size >= mostTables) tables.clear();
  tables.set(key, fewest);
  return fewest;
}
