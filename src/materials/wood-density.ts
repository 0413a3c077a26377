import type { CubicMm } from '../measure/quantities.js';
import { cubicFeet } from '../measure/volume.js';
import { pounds } from '../measure/weight.js';
import { type Sourced, sourced } from './sourced.js';
import { recalled } from './sources.js';

/** Kilograms per cubic meter. */
export type Density = number;

const WATER: Density = 1000;

/** A cubic meter. */
export const CUBIC_METER: CubicMm = 1e9;

/** A density from pounds in a cubic foot: 62.4 is water, 1000 kg in a cubic meter. */
export function perCubicFoot(lb: number): Density {
  return (pounds(lb) / cubicFeet(1)) * CUBIC_METER;
}

/**
 * Density at 12 % moisture from a Wood Handbook gravity: oven-dry mass over the volume at 12 %, so
 * the board carries 12 % of that mass in water on top. Wood Handbook chapter 4.
 * @example densityFromGravity12(sourced(0.48, source)).value // Douglas-fir: 538 kg/m3
 */
export function densityFromGravity12(gravity: Sourced<number>): Sourced<Density> {
  const { publication, standing } = gravity.source;
  return sourced(Math.round(gravity.value * 1.12 * WATER), {
    publication,
    place: `gravity ${gravity.value} at 12 %, x 1.12 x 1000`,
    standing: standing === 'checked' ? 'computed' : standing,
  });
}

/**
 * Density at 12 % moisture from an NDS gravity, which is oven-dry mass over oven-dry volume:
 * 62.4 x G / (1 + 0.009 x 12 x G) x 1.12 in lb/ft3 (NDS Supplement 3.1.3).
 * @example densityFromNdsGravity(sourced(0.42, source)).value // spruce-pine-fir: 450 kg/m3
 */
export function densityFromNdsGravity(gravity: Sourced<number>): Sourced<Density> {
  const moisture = 12;
  const swollen = 1 + 0.009 * moisture * gravity.value;
  const poundsPerCubicFoot = 62.4 * (gravity.value / swollen) * (1 + moisture / 100);
  return sourced(
    Math.round(perCubicFoot(poundsPerCubicFoot)),
    recalled('nds-supplement', `3.1.3, from gravity ${gravity.value}`),
  );
}
