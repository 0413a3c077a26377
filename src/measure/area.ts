import { formatAbout, formatNumber } from './format-number.js';
import { feet, inches } from './inch.js';
import type { Display, SquareMm } from './quantities.js';

const SQUARE_MM_PER_M2 = 1_000_000;
const SQUARE_MM_PER_CM2 = 100;

/** Square feet as mm2: one is 304.8 x 304.8 = 92903.04. */
export function squareFeet(n: number): SquareMm {
  return n * feet(1) ** 2;
}

/** Square inches as mm2: one is 645.16. */
export function squareInches(n: number): SquareMm {
  return n * inches(1) ** 2;
}

/** Mm2 as square feet. */
export function toSquareFeet(area: SquareMm): number {
  return area / squareFeet(1);
}

/** Square meters as mm2. */
export function squareMeters(n: number): SquareMm {
  return n * SQUARE_MM_PER_M2;
}

/** Mm2 as square meters. */
export function toSquareMeters(area: SquareMm): number {
  return area / SQUARE_MM_PER_M2;
}

/** A face to coat or glue: "38 sq ft" or "3.5 m2"; small ones in "12 sq in" or "79 cm2". */
export function formatArea(area: SquareMm, display: Display): string {
  if (display.system === 'metric') {
    if (toSquareMeters(area) < 0.1) return `${formatAbout(area / SQUARE_MM_PER_CM2)} cm2`;
    return `${formatNumber(toSquareMeters(area), 1)} m2`;
  }
  if (toSquareFeet(area) < 1) return `${formatAbout(area / squareInches(1))} sq in`;
  return `${formatAbout(toSquareFeet(area))} sq ft`;
}
