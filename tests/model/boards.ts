import fc from 'fast-check';
import { sectionNamed } from '../../src/materials/section.js';
import { boxAt } from '../../src/model/box.js';
import type { Axis, Box, Notch, Part } from '../../src/model/part.js';
import { solidOf } from '../../src/model/solid.js';

/** A box from its two corners, in whatever unit the test thinks in. */
export function corners(min: readonly number[], max: readonly number[]): Box {
  const [x0 = 0, y0 = 0, z0 = 0] = min;
  const [x1 = 0, y1 = 0, z1 = 0] = max;
  return { min: { x: x0, y: y0, z: z0 }, max: { x: x1, y: y1, z: z1 } };
}

/** A part of pure geometry: the section only gives it a name. */
export function part(
  id: string,
  box: Box,
  more: { runs?: Axis; face?: Axis; notches?: readonly Box[] } = {},
): Part {
  const section = sectionNamed('2x4');
  if (section === undefined) throw new Error('no 2x4');
  const { runs = 'x', face = 'y', notches = [] } = more;
  const cut = notches.map((at): Notch => ({ rule: 'notch', box: at, for: 'other' }));
  return {
    id,
    path: id,
    name: id,
    board: 'frame',
    section,
    runs,
    face,
    length: box.max[runs] - box.min[runs],
    box,
    notches: cut,
    solid: solidOf(box, cut),
    loose: false,
  };
}

/** Boxes on a grid of whole numbers, so that faces often meet and boxes often overlap. */
export const smallBoxes: fc.Arbitrary<Box> = fc
  .record({
    at: fc.tuple(
      fc.integer({ min: 0, max: 6 }),
      fc.integer({ min: 0, max: 6 }),
      fc.integer({ min: 0, max: 6 }),
    ),
    size: fc.tuple(
      fc.integer({ min: 1, max: 5 }),
      fc.integer({ min: 1, max: 5 }),
      fc.integer({ min: 1, max: 5 }),
    ),
  })
  .map(({ at: [x, y, z], size: [dx, dy, dz] }) => boxAt({ x, y, z }, { x: dx, y: dy, z: dz }));

/** Every unit cube of the grid that some box of the solid fills. */
export function cubes(solid: readonly Box[]): ReadonlySet<string> {
  const filled = new Set<string>();
  for (const { min, max } of solid) {
    for (let x = min.x; x < max.x; x += 1)
      for (let y = min.y; y < max.y; y += 1)
        for (let z = min.z; z < max.z; z += 1) filled.add(`${x},${y},${z}`);
  }
  return filled;
}
