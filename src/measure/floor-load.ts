import { squareFeet, squareMeters } from './area.js';
import { formatAbout } from './format-number.js';
import type { Display, Kilograms, SquareMm } from './quantities.js';
import { pounds } from './weight.js';

/** Weight on an area is in kilograms on a square meter inside. */
export type KgPerSquareMeter = number;

/** Pounds on a square foot as kg/m2: `psf(40)` is 195.3. */
export function psf(n: number): KgPerSquareMeter {
  return spread(pounds(n), squareFeet(1));
}

/** Kg/m2 as pounds on a square foot: 195.3 is 40. */
export function toPsf(load: KgPerSquareMeter): number {
  return load / psf(1);
}

/** A weight spread evenly over an area: 90.7 kg (200 lb) on 280 sq in is 502 kg/m2. */
export function spread(weight: Kilograms, area: SquareMm): KgPerSquareMeter {
  return (weight / area) * squareMeters(1);
}

/** "40 lb/sq ft" or "195 kg/m2". */
export function formatFloorLoad(load: KgPerSquareMeter, display: Display): string {
  if (display.system === 'metric') return `${formatAbout(load)} kg/m2`;
  return `${formatAbout(toPsf(load))} lb/sq ft`;
}
