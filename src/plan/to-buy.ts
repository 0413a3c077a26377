import type { Mm } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';
import { isToBuy, type RackBoard } from './rack.js';

/** Boards of one length to buy. */
export type ToBuy = { readonly length: Mm; readonly count: number };

/** Each board to buy for itself, in the order of the rack. */
export function eachToBuy(boards: readonly RackBoard[]): readonly ToBuy[] {
  return boards.filter(isToBuy).map(({ length }) => ({ length, count: 1 }));
}

/** By how many boards of each length there are more of one than of the other. */
export function moreThan(one: readonly ToBuy[], other: readonly ToBuy[]): readonly ToBuy[] {
  const lengths = one
    .map(({ length }) => length)
    .filter((length, at, all) => all.findIndex(it => sameLength(it, length)) === at);
  return lengths
    .map(length => ({ length, count: countOf(one, length) - countOf(other, length) }))
    .filter(({ count }) => count > 0);
}

/** How many boards of a length are to be bought. */
export function countOf(boards: readonly ToBuy[], wanted: Mm): number {
  return boards.reduce(
    (sum, { length, count }) => sum + (sameLength(length, wanted) ? count : 0),
    0,
  );
}
