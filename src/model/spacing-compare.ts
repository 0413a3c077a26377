import type { EvenSpacing } from './spacing.js';

/** One count among its neighbors. */
export type Compared = { readonly count: number; readonly spacing: EvenSpacing };

/**
 * The count before, the count itself and the one after, each spread in the same way, without those that
 * overlap or have no piece: what a maker wants to see side by side before settling.
 * @example compareCounts(14, n => spreadByCount(run, n)) // 75 in of 2 in balusters: 13, 14 and 15
 */
export function compareCounts(
  count: number,
  spreadAt: (count: number) => EvenSpacing,
): readonly Compared[] {
  return [count - 1, count, count + 1]
    .filter(n => n >= 1)
    .map(n => ({ count: n, spacing: spreadAt(n) }))
    .filter(({ spacing }) => spacing.gap >= 0 && spacing.endGap >= 0);
}
