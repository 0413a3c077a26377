import type { Axis, Box, Point } from './part.js';

/** Quarter turns about the upright axis, counterclockwise seen from above: +x goes to +y. */
export type Turns = 0 | 1 | 2 | 3;

/** A box carried to another place. */
export function translate(box: Box, by: Point): Box {
  return {
    min: { x: box.min.x + by.x, y: box.min.y + by.y, z: box.min.z + by.z },
    max: { x: box.max.x + by.x, y: box.max.y + by.y, z: box.max.z + by.z },
  };
}

/** A box turned about the z axis through the origin: one turn takes the point (2, 1) to (-1, 2). */
export function quarterTurn(box: Box, turns: Turns): Box {
  const { min, max } = box;
  if (turns === 0) return box;
  if (turns === 1) {
    return { min: { x: -max.y, y: min.x, z: min.z }, max: { x: -min.y, y: max.x, z: max.z } };
  }
  if (turns === 2) {
    return { min: { x: -max.x, y: -max.y, z: min.z }, max: { x: -min.x, y: -min.y, z: max.z } };
  }
  return { min: { x: min.y, y: -max.x, z: min.z }, max: { x: max.y, y: -min.x, z: max.z } };
}

/** A box seen in a mirror that stands across this axis at the origin. */
export function mirror(box: Box, axis: Axis): Box {
  return {
    min: { ...box.min, [axis]: -box.max[axis] },
    max: { ...box.max, [axis]: -box.min[axis] },
  };
}

/** Where an axis points after turning, its sign left aside: x becomes y after one or three turns. */
export function turnAxis(axis: Axis, turns: Turns): Axis {
  if (axis === 'z' || turns % 2 === 0) return axis;
  return axis === 'x' ? 'y' : 'x';
}
