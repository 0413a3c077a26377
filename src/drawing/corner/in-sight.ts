import { lessThan, SAME } from '../../measure/tolerance.js';
import type { Box } from '../../model/part.js';
import type { Span } from '../sight.js';
import type { Eye } from './corner-sight.js';
import type { Edge } from './solid-edges.js';

/**
 * The stretches of an edge that nothing hides, in mm from where it begins. From each of its points a ray goes to the eye; where it
 * passes through the inside of a box, the point is hidden. The rays of one edge that pass through one box
 * start at one stretch, which is worked out exactly. Rays that only graze a face are not stopped.
 */
export function spansInSight(edge: Edge, boxes: readonly Box[], eye: Eye): readonly Span[] {
  let open: readonly Span[] = [{ from: 0, to: edge.length }];
  for (const box of boxes) {
    const hidden = hiddenBy(edge, box, eye);
    if (hidden === undefined) continue;
    open = open.flatMap(span => without(span, hidden));
    if (open.length === 0) break;
  }
  return open;
}

/** The axes beside each. */
const ACROSS = { x: ['y', 'z'], y: ['x', 'z'], z: ['x', 'y'] } as const;

/** The stretch of an edge that a box hides; undefined for none. */
function hiddenBy({ from, axis, length }: Edge, box: Box, eye: Eye): Span | undefined {
  // How far a ray may have gone, in steps of the eye's direction, while it is inside across the edge.
  const [one, other] = ACROSS[axis];
  const oneMin = (box.min[one] - from[one]) * eye[one];
  const oneMax = (box.max[one] - from[one]) * eye[one];
  const far = Math.max(oneMin, oneMax);
  if (far <= SAME) return undefined;
  const otherMin = (box.min[other] - from[other]) * eye[other];
  const otherMax = (box.max[other] - from[other]) * eye[other];
  const near = Math.max(0, Math.min(oneMin, oneMax), Math.min(otherMin, otherMax));
  const last = Math.min(far, Math.max(otherMin, otherMax));
  if (last - near <= SAME) return undefined;
  // A ray that starts at s is at s + t * eye along the edge: inside for some t between near and far.
  const [low, high] = eye[axis] > 0 ? [near, last] : [-last, -near];
  const hiddenFrom = Math.max(0, box.min[axis] - from[axis] - high);
  const hiddenTo = Math.min(length, box.max[axis] - from[axis] - low);
  return lessThan(hiddenFrom, hiddenTo) ? { from: hiddenFrom, to: hiddenTo } : undefined;
}

function without(span: Span, hidden: Span): readonly Span[] {
  return [
    { from: span.from, to: Math.min(span.to, hidden.from) },
    { from: Math.max(span.from, hidden.to), to: span.to },
  ].filter(left => lessThan(left.from, left.to));
}
