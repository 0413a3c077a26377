import type { Mm } from '../measure/quantities.js';

/** How far off the last piece is when a spacer is stepped along instead of marking from one datum. */
export type Drift = {
  /** Every step off the same way, as with a spacer that is cut too long. */
  readonly worst: Mm;
  /** Steps off by chance one way and the other. */
  readonly random: Mm;
};

/**
 * Drift of so many steps, each off by `error`: n x error in the same direction, error x sqrt(n) by
 * chance. A spacer 1/64 in too long over 12 gaps pushes the last slat 3/16 in.
 */
export function driftOver(steps: number, error: Mm): Drift {
  return { worst: error * steps, random: Math.abs(error) * Math.sqrt(steps) };
}

/**
 * Error of one spacer from a stack of them, too small to be read on one alone: six spacers that measure
 * 3/32 in more than six gaps are each 1/64 in too long.
 */
export function errorFromStack(stack: Mm, gap: Mm, count: number): Mm {
  return (stack - count * gap) / count;
}
