import { inches } from '../../measure/inch.js';
import type { Mm } from '../../measure/quantities.js';
import type { Points } from './mark.js';

/** How wide a line of writing comes out: the font knows. */
export type TypeRule = (text: string, size: Points, bold: boolean) => Mm;

/**
 * Sizes to be read at arm's length: 11 points and more for what is read while working (common
 * practice for print read at 24 in), less only for captions.
 */
export const SIZE = {
  title: 22,
  heading: 13,
  words: 11,
  table: 10.5,
  small: 9,
} as const satisfies Record<string, Points>;

/** From one line of writing to the next. */
export function leading(size: Points): Mm {
  return points(size) * 1.3;
}

/** From the top of a line down to where the letters stand. */
export function ascent(size: Points): Mm {
  return points(size) * 0.98;
}

/** Points as mm: 72 points are an inch. */
export function points(size: Points): Mm {
  return inches(size / 72);
}
