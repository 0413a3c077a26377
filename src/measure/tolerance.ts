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

/** True when `a` is no longer than `b`, give or take SAME. */
export function atMost(a: Mm, b: Mm): boolean {
  return a <= b + SAME;
}

/** True when `a` is clearly shorter than `b`, by more than SAME. */
export function lessThan(a: Mm, b: Mm): boolean {
  return a < b - SAME;
}
