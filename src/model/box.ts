import type { CubicMm, Mm, SquareMm } from '../measure/quantities.js';
import { atMost, lessThan, SAME } from '../measure/tolerance.js';
import { AXES, type Axis, type Box, type Point } from './part.js';

/** A box by its corner nearest the origin and its extents, in mm: a post is 88.9 x 38.1 x 292.1. */
export function boxAt(corner: Point, size: Point): Box {
  return {
    min: corner,
    max: { x: corner.x + size.x, y: corner.y + size.y, z: corner.z + size.z },
  };
}

/** A point with one of its coordinates replaced. All points are made alike, which the engine is fast with. */
export function withAxis({ x, y, z }: Point, axis: Axis, at: Mm): Point {
  return { x: axis === 'x' ? at : x, y: axis === 'y' ? at : y, z: axis === 'z' ? at : z };
}

/** How long a box is along an axis, in mm. */
export function extent(box: Box, axis: Axis): Mm {
  return box.max[axis] - box.min[axis];
}

/** The middle of a box. */
export function center(box: Box): Point {
  return {
    x: (box.min.x + box.max.x) / 2,
    y: (box.min.y + box.max.y) / 2,
    z: (box.min.z + box.max.z) / 2,
  };
}

/** What a box holds: 2 in x 3 in x 4 in is 24 cu in, in cubic mm. */
export function volume(box: Box): CubicMm {
  return extent(box, 'x') * extent(box, 'y') * extent(box, 'z');
}

/** The two axes beside this one, in the order x, y, z. */
export function otherAxes(axis: Axis): readonly [Axis, Axis] {
  if (axis === 'x') return ['y', 'z'];
  return axis === 'y' ? ['x', 'z'] : ['x', 'y'];
}

/** Area of one of the two faces that look along an axis. */
export function faceArea(box: Box, axis: Axis): SquareMm {
  const [u, v] = otherAxes(axis);
  return extent(box, u) * extent(box, v);
}

/** What two boxes share, or undefined when they only touch or stand apart. */
export function intersect(a: Box, b: Box): Box | undefined {
  const min = {
    x: Math.max(a.min.x, b.min.x),
    y: Math.max(a.min.y, b.min.y),
    z: Math.max(a.min.z, b.min.z),
  };
  const max = {
    x: Math.min(a.max.x, b.max.x),
    y: Math.min(a.max.y, b.max.y),
    z: Math.min(a.max.z, b.max.z),
  };
  const thick = max.x - min.x > SAME && max.y - min.y > SAME && max.z - min.z > SAME;
  return thick ? { min, max } : undefined;
}

/**
 * What is left of a box when another is taken out of it: up to six boxes that do not overlap. Whole
 * slices across x come off first, then y, then z.
 */
export function subtract(from: Box, hole: Box): readonly Box[] {
  const common = intersect(from, hole);
  if (common === undefined) return [from];
  const left: Box[] = [];
  let rest = from;
  for (const axis of AXES) {
    if (lessThan(rest.min[axis], common.min[axis])) {
      left.push({ min: rest.min, max: { ...rest.max, [axis]: common.min[axis] } });
    }
    if (lessThan(common.max[axis], rest.max[axis])) {
      left.push({ min: { ...rest.min, [axis]: common.max[axis] }, max: rest.max });
    }
    rest = {
      min: { ...rest.min, [axis]: common.min[axis] },
      max: { ...rest.max, [axis]: common.max[axis] },
    };
  }
  return left;
}

/** True when the inner box lies in the outer one, faces included. */
export function contains(outer: Box, inner: Box): boolean {
  return AXES.every(
    axis => atMost(outer.min[axis], inner.min[axis]) && atMost(inner.max[axis], outer.max[axis]),
  );
}

/** The smallest box around all of these, or undefined for none. */
export function bounds(boxes: readonly Box[]): Box | undefined {
  const [first] = boxes;
  if (first === undefined) return undefined;
  const min = { ...first.min };
  const max = { ...first.max };
  for (const box of boxes) {
    for (const axis of AXES) {
      min[axis] = Math.min(min[axis], box.min[axis]);
      max[axis] = Math.max(max[axis], box.max[axis]);
    }
  }
  return { min, max };
}
