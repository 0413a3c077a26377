import type { SquareMm } from '../../measure/quantities.js';
import { lessThan } from '../../measure/tolerance.js';
import type { Box } from '../../model/part.js';
import type { Span } from '../sight.js';
import { areaOf, type Convex } from './convex.js';
import type { Eye } from './corner-sight.js';
import { outlineOf } from './outline.js';

/**
 * A box of wood, and where its outline lies on the paper: between two lines of each of the three
 * directions that edges have there. Two outlines overlap exactly where all three stretches do.
 */
export type Seen = { readonly box: Box; readonly on: readonly [Span, Span, Span] };

/** A box that may hide others, with its outline on the paper. */
export type Wood = Seen & { readonly outline: Convex; readonly area: SquareMm };

export function woodOf(box: Box, eye: Eye): Wood {
  const outline = outlineOf(box, eye);
  return { ...seenBox(box, eye), outline, area: areaOf(outline) };
}

/** A box as it is seen; a flat one or an edge, too. */
export function seenBox(box: Box, eye: Eye): Seen {
  const along = (axis: 'x' | 'y'): Span =>
    eye[axis] > 0
      ? { from: box.min[axis], to: box.max[axis] }
      : { from: -box.max[axis], to: -box.min[axis] };
  const [x, y, z] = [along('x'), along('y'), { from: box.min.z, to: box.max.z }];
  return { box, on: [less(x, y), less(x, z), less(y, z)] };
}

/** What stays the same along a ray to the eye, where all coordinates grow alike. */
function less(a: Span, b: Span): Span {
  return { from: a.from - b.to, to: a.to - b.from };
}

/** Whether one may hide something of the other. */
export function overlap({ on: a }: Seen, { on: b }: Seen): boolean {
  return overlaps(a[0], b[0]) && overlaps(a[1], b[1]) && overlaps(a[2], b[2]);
}

function overlaps(a: Span, b: Span): boolean {
  return lessThan(a.from, b.to) && lessThan(b.from, a.to);
}
