import { formatNumber } from './format-number.js';
import { inches, toFeet, toInches } from './inch.js';
import type { Display, Mm } from './quantities.js';
import { gridSteps, snap } from './round.js';
import { sameLength } from './tolerance.js';

/**
 * A length as it is marked on wood, to the nearest line of the marking grid: 1181.1 mm is "46-1/2
 * in" in sixteenths, "1181 mm" in whole millimeters. A minus is kept. For inches the grid must be a
 * fraction of an inch (see displays.ts).
 */
export function formatLength(length: Mm, display: Display): string {
  if (display.system === 'metric') return `${formatNumber(snap(length, display.grid), 3)} mm`;
  const parts = Math.round(inches(1) / display.grid);
  return `${inchFraction(gridSteps(length, display.grid, 'nearest'), parts)} in`;
}

/** So many sixteenths (or other parts) as a whole number and a fraction in lowest terms. */
function inchFraction(steps: number, parts: number): string {
  const sign = steps < 0 ? '-' : '';
  const whole = Math.floor(Math.abs(steps) / parts);
  const rest = Math.abs(steps) % parts;
  if (rest === 0) return `${sign}${whole}`;
  const shared = commonDivisor(rest, parts);
  const fraction = `${rest / shared}/${parts / shared}`;
  return whole === 0 ? `${sign}${fraction}` : `${sign}${whole}-${fraction}`;
}

function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b);
}

/** The finest decimals worth showing: 0.0001 in is 0.0025 mm. */
const INCH_PLACES = 4;
const MM_PLACES = 2;
/** Off the grid by less than this share of it, a length counts as marked exactly. */
const OFF_GRID = 1e-3;

/**
 * A length as computed: like formatLength when it lies on the marking grid, else in decimals. Six
 * thirteenths of an inch is "0.4615 in", where a tape would show 7/16. Millimeters get two
 * decimals, since three behind a point read as thousands in much of the world.
 */
export function formatLengthExact(length: Mm, display: Display): string {
  const off = Math.abs(length - snap(length, display.grid));
  if (off <= display.grid * OFF_GRID) return formatLength(length, display);
  if (display.system === 'metric') return `${formatNumber(length, MM_PLACES)} mm`;
  return `${formatNumber(toInches(length), INCH_PLACES)} in`;
}

/** A store length in feet when they are whole, "8 ft", else in inches to 1/16: "92-5/8 in". */
export function formatFeet(length: Mm): string {
  const whole = Math.round(toFeet(length));
  if (sameLength(length, inches(whole * 12))) return `${formatNumber(whole, 0)} ft`;
  return formatLength(length, { system: 'inch', grid: inches(1 / 16) });
}

/**
 * A store length as the yard sells it: "8 ft", or "2.4 m", or "2438 mm" when it is no round metric.
 */
export function formatBoardLength(length: Mm, display: Display): string {
  if (display.system === 'inch') return formatFeet(length);
  if (sameLength(length, snap(length, 10))) return `${formatNumber(length / 1000, 2)} m`;
  return formatLength(length, display);
}
