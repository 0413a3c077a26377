import type { Mm } from '../measure/quantities.js';
import { SAME } from '../measure/tolerance.js';
import type { EvenSpacing } from './spacing.js';

/** A run with a gap that is not to be changed; what is left over goes to the two ends in equal parts. */
export type FixedGapRun = { readonly over: Mm; readonly piece: Mm; readonly gap: Mm };

/**
 * The pieces at that gap with the same margin at both ends. Six 5-1/2 in boards 3-1/2 in apart between
 * posts 61-1/4 in apart leave 5-3/8 in at each end. The margin is negative where they do not fit.
 */
export function spreadWithMargins(run: FixedGapRun, count: number): EvenSpacing {
  const { over, piece, gap } = run;
  const taken = count * piece + Math.max(0, count - 1) * gap;
  const endGap = count === 0 ? over : (over - taken) / 2;
  const marks = Array.from({ length: count }, (_, i) => endGap + i * (piece + gap));
  const last = marks[count - 1];
  const closes = last === undefined ? over : last + piece + endGap;
  return { count, gap, endGap, marks, closes };
}

/**
 * The most pieces whose margins are not negative: seven 5-1/2 in boards 3-1/2 in apart in 61-1/4 in. The
 * piece and its gap together have to be longer than nothing.
 */
export function mostWithMargins({ over, piece, gap }: FixedGapRun): number {
  return Math.max(0, Math.floor((over + gap) / (piece + gap) + SAME));
}
