import type { CubicMm, Mm } from '../measure/quantities.js';
import { cubicFeet } from '../measure/volume.js';
import { sourced } from './sourced.js';
import { practice } from './sources.js';

/** A box by its outside sizes. */
export type SoilBox = {
  readonly length: Mm;
  readonly width: Mm;
  readonly height: Mm;
  readonly wall: Mm;
  readonly floor: Mm;
  /** Left open between soil and rim. */
  readonly belowRim: Mm;
};

export type Inside = { readonly length: Mm; readonly width: Mm; readonly depth: Mm };

/** How much the first filling sinks. */
export const SETTLING = sourced(0.15, practice('loose fill settles about 15 %'));

export const SOIL_BAGS = {
  inch: [
    { name: '1 cu ft bag', holds: cubicFeet(1) },
    { name: '2 cu ft bag', holds: cubicFeet(2) },
  ],
  metric: [
    { name: '40 l bag', holds: 40e6 },
    { name: '50 l bag', holds: 50e6 },
  ],
  source: practice('usual bag sizes'),
} as const;

/**
 * The room that soil fills. A size of zero or less means that the walls meet or the rim is too deep.
 * @example an 8 x 2 x 1 ft box of 3/4 in boards, 1 in below the rim // 94-1/2 x 22-1/2 x 10-1/4 in
 */
export function insideOf({ length, width, height, wall, floor, belowRim }: SoilBox): Inside {
  return {
    length: length - 2 * wall,
    width: width - 2 * wall,
    depth: height - floor - belowRim,
  };
}

/** The space of an inside in mm3: 94-1/2 x 22-1/2 x 10-1/4 in is 12.6 cu ft. */
export function spaceOf({ length, width, depth }: Inside): CubicMm {
  return length * width * depth;
}

/** What has to be filled in so that it is full after settling: 12.6 cu ft is 14.5. */
export function looseFill(space: CubicMm): CubicMm {
  return space * (1 + SETTLING.value);
}

/** Whole bags for a space, settling counted: 12.6 cu ft in 2 cu ft bags is 7.3, so 8. */
export function bagsFor(space: CubicMm, bag: CubicMm): number {
  return Math.ceil(looseFill(space) / bag - 1e-9);
}

/** How deep so many bags fill a box before they settle: two of 2 cu ft give 3-1/4 in there. */
export function depthOfBags(bags: number, bag: CubicMm, { length, width }: Inside): Mm {
  return (bags * bag) / (length * width);
}
