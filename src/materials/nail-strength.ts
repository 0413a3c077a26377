import { forceWeight, poundsForce } from '../measure/force.js';
import { toInches } from '../measure/inch.js';
import type { Kilograms, Mm } from '../measure/quantities.js';
import { type Sourced, sourced } from './sourced.js';
import { recalled, seen } from './sources.js';

const ALLOWABLE = 1380;

export const NAIL_PULL_SOURCE = seen('nail-withdrawal', '1380 G^2.5 D, lb for an inch');

/** Plain nails lose most of their grip where wood gets wet and dries again. */
export const NAIL_WET_FACTOR: Sourced<number> = sourced(
  0.25,
  recalled('nds', 'Table 11.3.3, CM for plain nails where moisture comes and goes'),
);

/** A plain nail: its diameter and its length in the board with the point. */
export type HeldNail = { readonly diameter: Mm; readonly bite: Mm; readonly gravity: number };

/**
 * What a plain nail in side grain may hold against being pulled out, dry.
 * @example 20d (0.203 in), 1 in deep, gravity 0.45: 17.3 kg, 38 lb
 */
export function nailPull({ diameter, bite, gravity }: HeldNail, wet: boolean): Kilograms {
  const perInch = ALLOWABLE * gravity ** 2.5 * toInches(diameter);
  const dry = forceWeight(poundsForce(perInch * toInches(bite)));
  return dry * (wet ? NAIL_WET_FACTOR.value : 1);
}
