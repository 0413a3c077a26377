import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import type { BoardYear } from './board-year.js';
import { sourced } from './sourced.js';
import { practice } from './sources.js';

/** The widest a round hole is bored over the screw before its head loses hold. */
export const ROUND_OVERSIZE = sourced<Mm>(
  2,
  practice('clearance holes 1.5 to 2 mm over the screw'),
);

/** A hole that lets a part move across the grain under its screw. */
export type Slot = {
  /** How far the wood slides past the screw on the way to the wettest and to the driest time. */
  readonly out: Mm;
  readonly back: Mm;
  /** Length of the hole along the movement, with the screw set in its middle today. */
  readonly length: Mm;
  /** How much longer it is than the screw is thick. */
  readonly oversize: Mm;
  readonly shape: 'round' | 'slot';
};

/**
 * The hole for a screw, when `year` is that of the wood between the screw and the point that is held:
 * the half of a part held in its middle, or the whole of one held at an edge.
 * @example slotFor(halfYear, 5) // 17-1/4 in of Douglas-fir, 8 to 14 %: 7 mm of travel out, slot 19 mm
 */
export function slotFor(year: BoardYear, screw: Mm): Slot {
  const travel = Math.max(Math.abs(year.swell), Math.abs(year.shrink));
  const oversize = 2 * travel;
  return {
    out: year.swell,
    back: year.shrink,
    length: screw + oversize,
    oversize,
    shape: atMost(oversize, ROUND_OVERSIZE.value) ? 'round' : 'slot',
  };
}
