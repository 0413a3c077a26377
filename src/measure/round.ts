import type { Mm } from './quantities.js';
import { SAME } from './tolerance.js';

export type Way = 'nearest' | 'up' | 'down';

/**
 * How many grid steps a length is: the nearest, the next up or the next down. A length within SAME
 * of a grid line is on it, whichever way; a length midway goes away from zero. 3.49 in on a grid of
 * 1/16 in is 56 steps to the nearest and 55 down.
 */
export function gridSteps(length: Mm, grid: Mm, way: Way): number {
  const steps = length / grid;
  const slack = SAME / grid;
  if (way === 'up') return unsigned(Math.ceil(steps - slack));
  if (way === 'down') return unsigned(Math.floor(steps + slack));
  return unsigned(Math.sign(steps) * Math.floor(Math.abs(steps) + 0.5 + slack));
}

/** Minus zero would print as "-0". */
function unsigned(n: number): number {
  return n === 0 ? 0 : n;
}

/**
 * Drops what binary arithmetic adds far behind the point: 56 x 1.5875 mm is 88.9, not
 * 88.89999999999999. Nothing anybody measures reaches a billionth of a mm.
 */
export function tidy(length: Mm): Mm {
  return Math.round(length * 1e9) / 1e9;
}

/** The nearest grid line: 69.27 mm on a grid of 1/16 in is 2-3/4 in, 69.85 mm. */
export function snap(length: Mm, grid: Mm): Mm {
  return tidy(gridSteps(length, grid, 'nearest') * grid);
}

/** The grid line at or below: a part that must not come out long. */
export function snapDown(length: Mm, grid: Mm): Mm {
  return tidy(gridSteps(length, grid, 'down') * grid);
}

/**
 * Whole numbers for exact searches: 1/64 in is 0.396875 mm = 127/320 mm and 0.1 mm is 32/320 mm, so
 * both are whole units of 1/320 mm.
 */
export const UNITS_PER_MM = 320;

/**
 * Whole units of 1/320 mm: `toUnits(feet(8), 'down')` is 780288. Round parts up and boards down.
 */
export function toUnits(length: Mm, way: Way): number {
  return gridSteps(length, 1 / UNITS_PER_MM, way);
}

/** Units of 1/320 mm as mm: `fromUnits(127)` is 1/64 in. */
export function fromUnits(units: number): Mm {
  return units / UNITS_PER_MM;
}
