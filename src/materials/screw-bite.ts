import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { shank } from './gauges.js';
import { practice, recalled, seen } from './sources.js';
import type { Species } from './species.js';

/** Two pieces that a screw shall hold, along the line of the screw. */
export type ScrewJoint = {
  /** Wood under the head, after notching. */
  readonly through: Mm;
  /** Wood that the point may go into. */
  readonly into: Mm;
  /** What the point meets: the side of the fibers or their cut ends. */
  readonly grain: 'side' | 'end';
  readonly wood: Species;
  readonly gauge?: number;
};

type Held = Pick<ScrewJoint, 'through' | 'grain'>;

/** Wood left beyond the point: 1/4 in, and 1/8 in where nothing else fits. Common practice. */
export const USUAL_COVER: Mm = inches(1 / 4);
export const LEAST_COVER: Mm = inches(1 / 8);

const LEAST_DIAMETERS = 6;
const FULL_DIAMETERS = 10;
const LEAST_THREAD = inches(1);
const SHARE_OF_HELD_PIECE = 2 / 3;
const MORE_IN_END_GRAIN = inches(1 / 2);

/**
 * The bite a screw should have: 6 diameters (NDS 12.1.5.6, point included), 1 in (trade press), and
 * two-thirds of the piece it holds (trade press) as far as that helps, which is up to 10 diameters.
 * End grain wants 1/2 in more (This Old House).
 * @example leastBite({ through: inches(1.5), grain: 'side' }, 10) // 28.956 mm: 6 x 0.190 in
 */
export function leastBite({ through, grain }: Held, gauge: number): Mm {
  const diameter = shank(gauge);
  const shareOfPiece = Math.min(through * SHARE_OF_HELD_PIECE, diameter * FULL_DIAMETERS);
  return Math.max(diameter * LEAST_DIAMETERS, LEAST_THREAD, shareOfPiece) + endGrainExtra(grain);
}

/** The bite below which NDS gives a screw no sideways value at all: 6 diameters. */
export function smallestBite({ grain }: Held, gauge: number): Mm {
  return shank(gauge) * LEAST_DIAMETERS + endGrainExtra(grain);
}

/** The bite that carries the full sideways value: 10 diameters (NDS Table 12L, footnote). */
export function aimedBite(held: Held, gauge: number): Mm {
  return Math.max(shank(gauge) * FULL_DIAMETERS, leastBite(held, gauge));
}

/**
 * The longest screw that leaves this much wood beyond its point.
 * @example lengthCap({ through: inches(1.5), into: inches(1.5) }, USUAL_COVER) // 69.85 mm: 2-3/4 in
 */
export function lengthCap({ through, into }: Pick<ScrewJoint, 'through' | 'into'>, cover: Mm): Mm {
  return through + into - cover;
}

function endGrainExtra(grain: ScrewJoint['grain']): Mm {
  return grain === 'end' ? MORE_IN_END_GRAIN : 0;
}

/** Where the rules on bite and cover come from. */
export const BITE_SOURCES = [
  recalled('nds', '12.1.5.6, 6 diameters at least; Table 12L footnote, 10 for the full value'),
  seen('screw-engagement', '1 to 1-1/2 in of thread in the second board'),
  seen('screw-length-two-thirds', 'two-thirds of the fastened piece'),
  seen('screw-length-magazine', '1/2 in more into end grain'),
  practice('1/4 in of wood beyond the point, 1/8 in at the least'),
];
