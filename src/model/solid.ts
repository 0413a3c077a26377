import type { CubicMm, SquareMm } from '../measure/quantities.js';
import { contains, faceArea, subtract, volume } from './box.js';
import { boxTable } from './box-table.js';
import { AXES, type Axis, type Box, type Notch } from './part.js';
import { touchingFaces } from './touching-faces.js';

/** Surface of a board: side grain takes up less sealer and holds screws better than end grain. */
export type Surface = { readonly faces: SquareMm; readonly endGrain: SquareMm };

/** The blank with its notches cut, as boxes that do not overlap. */
export function solidOf(blank: Box, notches: readonly Notch[]): readonly Box[] {
  return notches.reduce<readonly Box[]>(
    (boxes, notch) => boxes.flatMap(box => subtract(box, notch.box)),
    [blank],
  );
}

/** The notches that take wood of their own: one that lies wholly in another is not cut again. */
export function cutNotches(notches: readonly Notch[]): readonly Notch[] {
  if (notches.length < 2) return notches;
  return notches.filter(
    (notch, i) =>
      !notches.some(
        (other, j) =>
          i !== j &&
          contains(other.box, notch.box) &&
          // Of two that are the same box, the first stays.
          (j < i || !contains(notch.box, other.box)),
      ),
  );
}

/** What a solid holds, in cubic mm. */
export function solidVolume(solid: readonly Box[]): CubicMm {
  return solid.reduce((sum, box) => sum + volume(box), 0);
}

/**
 * All surface of one solid whose grain runs along an axis. A 2x4 of 10 in: 2 x (3.5 + 1.5) x 10 = 100 sq
 * in of faces and 2 x 3.5 x 1.5 = 10.5 sq in of end grain, in square mm. The shoulder of a notch that
 * looks along the board is end grain too.
 */
export function surfaceOf(solid: readonly Box[], runs: Axis): Surface {
  const area = { x: 0, y: 0, z: 0 };
  for (const box of solid) {
    for (const axis of AXES) area[axis] += 2 * faceArea(box, axis);
  }
  // Faces between two boxes of the solid are cut by nobody: they are inside the wood.
  if (solid.length > 1) {
    for (const inner of touchingFaces(boxTable(solid.map(box => [box])))) {
      area[inner.axis] -= 2 * faceArea(inner.patch, inner.axis);
    }
  }
  const all = area.x + area.y + area.z;
  return { faces: all - area[runs], endGrain: area[runs] };
}
