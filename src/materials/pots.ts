import type { Source } from '../measure/figure.js';
import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { atMost, lessThan } from '../measure/tolerance.js';
import type { Pot } from './pot.js';
import { CLAY_POTS } from './pots-clay.js';
import { NURSERY_POTS } from './pots-nursery.js';
import { PLASTIC_POTS } from './pots-plastic.js';
import { sourced } from './sourced.js';
import { practice } from './sources.js';

/** Every pot with a known size. */
export const POTS: readonly Pot[] = [...NURSERY_POTS, ...CLAY_POTS, ...PLASTIC_POTS];

/** The pot with this id, or undefined. */
export function potNamed(id: string): Pot | undefined {
  return POTS.find(pot => pot.id === id);
}

/** Air round a pot, so that it goes in and comes out, and the wall dries. */
export const AIR_ROUND_POT = sourced<{ readonly least: Mm; readonly most: Mm }>(
  { least: inches(1 / 2), most: inches(1) },
  practice('1/2 to 1 in of air round a pot or liner'),
);

/** How four boards meet at the corners of a box. */
export type Corner =
  /** Each board runs past one neighbor and stops at the other. */
  | 'pinwheel'
  /** Two boards stand between the other two. */
  | 'between';

/**
 * The narrowest inside of a box of four boards cut alike.
 * @example narrowestInside(inches(6), inches(0.75), 'between') // 4-1/2 in
 */
export function narrowestInside(cut: Mm, thickness: Mm, corner: Corner): Mm {
  return cut - (corner === 'pinwheel' ? 1 : 2) * thickness;
}

export type PotFit = {
  /** Air on each side; below zero the pot does not go in. */
  readonly clearance: Mm;
  readonly verdict: 'fits' | 'look again' | 'does not fit';
  readonly source: Source;
};

/**
 * Whether the rim of a pot goes into an inside, and with how much air on each side.
 * @example potFit(inches(5.25), inches(5)) // 1/8 in a side: it goes in, tight
 */
export function potFit(inside: Mm, rim: Mm): PotFit {
  const clearance = (inside - rim) / 2;
  const { value, source } = AIR_ROUND_POT;
  const verdict = lessThan(clearance, 0)
    ? 'does not fit'
    : atMost(value.least, clearance)
      ? 'fits'
      : 'look again';
  return { clearance, verdict, source };
}

/**
 * What has to stand under a pot: inside height less pot less reveal, the reveal being how far the rim
 * stays below the top edge of the box (negative where it rises above). Below zero the pot is too tall.
 * @example riser(inches(6.5), inches(5), inches(0.5)) // 1 in
 */
export function riser(insideHeight: Mm, potHeight: Mm, reveal: Mm): Mm {
  return insideHeight - potHeight - reveal;
}
