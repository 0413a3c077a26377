import type { Mm } from '../measure/quantities.js';

/** How the ground falls: so much over such a distance, along the length and along the depth. */
export type Fall = { readonly drop: Mm; readonly over: Mm };

/** How far the ground falls between two legs: 1/8 in a foot is 1/2 in over 48 in. */
export function dropBetween({ drop, over }: Fall, legsApart: Mm): Mm {
  return (drop / over) * legsApart;
}

/** The slope in degrees: 1/4 in a foot is 1.2. */
export function slopeDegrees({ drop, over }: Fall): number {
  return (Math.atan2(drop, over) * 180) / Math.PI;
}

export type LegTrims = {
  /** To cut off the foot of each leg, all cut to one length before. The longest leg loses nothing. */
  readonly highBack: Mm;
  readonly highFront: Mm;
  readonly lowBack: Mm;
  readonly lowFront: Mm;
};

/**
 * What each foot loses so that the seat is level on ground that falls from the high end to the low end
 * and from the back to the front.
 * @example 48 in of legs at 1/8 in a foot, 14 in at the same // 0.65, 0.5, 0.15, 0 in
 */
export function legTrims(dropAlong: Mm, dropToFront: Mm): LegTrims {
  return {
    highBack: dropAlong + dropToFront,
    highFront: dropAlong,
    lowBack: dropToFront,
    lowFront: 0,
  };
}
