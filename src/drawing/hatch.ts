import type { Mm } from '../measure/quantities.js';
import { lessThan } from '../measure/tolerance.js';
import type { PaperPoint, Patch, Stroke } from './strokes.js';

/**
 * Lines at 45 degrees over a face, so far apart (measured square to them) and through the same places
 * of the paper on every face, so that the parts of one cut face hatch as one.
 */
export function hatchStrokes(patch: Patch, apart: Mm): readonly Stroke[] {
  // On a line that leans to the right, v - u stays the same; on one to the left, v + u.
  const sign = patch.lean === 'right' ? -1 : 1;
  const across = (point: PaperPoint) => point.v + sign * point.u;
  const levels = patch.corners.map(across);
  const step = apart * Math.SQRT2;
  const strokes: Stroke[] = [];
  const first = Math.floor(Math.min(...levels) / step) + 1;
  for (let level = first * step; level < Math.max(...levels); level += step) {
    const ends = crossings(patch.corners, point => across(point) - level);
    const from = ends.reduce((best, end) => (end.u < best.u ? end : best));
    const to = ends.reduce((best, end) => (end.u > best.u ? end : best));
    if (lessThan(from.u, to.u)) strokes.push({ from, to, kind: 'hatch', bright: false });
  }
  return strokes;
}

/** Where the edges of a shape cross a line that is told by how far off it each point is. */
function crossings(
  corners: readonly PaperPoint[],
  off: (point: PaperPoint) => number,
): readonly [PaperPoint, ...PaperPoint[]] {
  const found = corners.flatMap((from, i) => {
    const to = corners[(i + 1) % corners.length] ?? from;
    const [a, b] = [off(from), off(to)];
    if (a === b || Math.min(a, b) > 0 || Math.max(a, b) < 0) return [];
    const share = a / (a - b);
    return [{ u: from.u + share * (to.u - from.u), v: from.v + share * (to.v - from.v) }];
  });
  const [first, ...rest] = found;
  if (first === undefined) throw new Error('a line between two corners crosses no edge');
  return [first, ...rest];
}
