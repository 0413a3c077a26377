import type { ScrewContact } from '../materials/screw-spacing.js';
import { sameLength } from '../measure/tolerance.js';
import { extent, otherAxes } from '../model/box.js';
import type { Joint, Part } from '../model/part.js';

/** The overlap as the head sees it; undefined where the screw runs along the grain under its head. */
export function contactOf({ patch, drive }: Joint, { runs, box }: Part): ScrewContact | undefined {
  if (runs === drive.axis) return undefined;
  const across = otherAxes(drive.axis).find(axis => axis !== runs);
  if (across === undefined) return undefined;
  const ends = [
    sameLength(patch.min[runs], box.min[runs]),
    sameLength(patch.max[runs], box.max[runs]),
  ].filter(Boolean).length;
  return {
    length: extent(patch, runs),
    width: extent(patch, across),
    ends: ends === 0 ? 'none' : ends === 1 ? 'one' : 'both',
  };
}
