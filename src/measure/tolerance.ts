import type { Mm } from './quantities.js';

/**
 * Two lengths closer than this are the same length, in mm. It is far below anything a tool can mark
 * (1/64 in is 0.4 mm) and far above what ordinary arithmetic loses on lengths of 100 m.
 */
export const SAME: Mm = 1e-6;

/** True when two lengths differ by no more than SAME: 3 x 1/3 in is the same as 1 in. */
export function sameLength(a: Mm, b: Mm): boolean {
  return Math.abs(a - b) <= SAME;
}

/**
 * A key to collect equal lengths by: lengths that are the same have the same one, lengths a thousandth of
 * a millimeter apart another. Rounding to decimals does not do: 1/8 in is 3.175 mm, half-way between two
 * hundredths, where what arithmetic loses decides. The bounds of these bins fall beside every mark of a
 * tape and beside its small parts.
 */
export function lengthKey(length: Mm): string {
  return String(Math.floor(length * 1000 + OFF_THE_MARKS));
}

/** The golden ratio's fraction: of all fractions the one that stays farthest from every simple one. */
const OFF_THE_MARKS = (Math.sqrt(5) - 1) / 2;

/** True when `a` is no longer than `b`, give or take SAME. */
export function atMost(a: Mm, b: Mm): boolean {
  return a <= b + SAME;
}

/** True when `a` is clearly shorter than `b`, by more than SAME. */
export function lessThan(a: Mm, b: Mm): boolean {
  return a < b - SAME;
}
