import { atMost, lessThan, sameLength } from '../measure/tolerance.js';
import { bounds, faceArea, otherAxes } from './box.js';
import type { Axis, Box } from './part.js';

/**
 * Flat rectangles of one plane, joined wherever two with a whole edge in common make a bigger one. The
 * rectangles do not overlap; `axis` is the one that they are flat along.
 */
export function mergePatches(patches: readonly Box[], axis: Axis): readonly Box[] {
  const merged: Box[] = [];
  for (const patch of patches) {
    let grown = patch;
    let i = 0;
    while (i < merged.length) {
      const other = merged[i];
      if (other !== undefined && makeOne(grown, other, axis)) {
        grown = around(grown, other);
        merged.splice(i, 1);
        i = 0;
      } else i += 1;
    }
    merged.push(grown);
  }
  return merged;
}

/**
 * Rectangles of one plane in groups that hang together edge to edge: each group is one place where two
 * boards lie on each other, whatever shape it has.
 */
export function connectedPatches(patches: readonly Box[], axis: Axis): readonly (readonly Box[])[] {
  let groups: Box[][] = [];
  for (const patch of patches) {
    const near = groups.filter(group => group.some(other => adjoins(patch, other, axis)));
    const far = groups.filter(group => !near.includes(group));
    groups = [...far, [...near.flat(), patch]];
  }
  return groups;
}

/**
 * The largest rectangle that lies wholly on these rectangles of one plane: the room for screws in an
 * L-shaped place. The first of equals, in the order of the axes.
 */
export function largestRectangle(patches: readonly Box[], axis: Axis): Box {
  const [first, ...rest] = patches;
  if (first === undefined) throw new Error('no patch to look for a rectangle in');
  if (rest.length === 0) return first;
  let best = first;
  for (const candidate of rectangles(patches, axis)) {
    const larger = lessThan(faceArea(best, axis), faceArea(candidate, axis));
    if (larger && covered(candidate, patches, axis)) best = candidate;
  }
  return best;
}

/** Every rectangle between two edges of the patches along either axis. */
function rectangles(patches: readonly Box[], axis: Axis): readonly Box[] {
  const [first] = patches;
  if (first === undefined) return [];
  const [u, v] = otherAxes(axis);
  const spans = (along: Axis) => {
    const edges = patches.flatMap(patch => [patch.min[along], patch.max[along]]);
    const lines = [...new Set(edges)].sort((a, b) => a - b);
    return lines.flatMap((from, i) => lines.slice(i + 1).map(to => ({ from, to })));
  };
  return spans(u).flatMap(across =>
    spans(v).map(up => ({
      min: { ...first.min, [u]: across.from, [v]: up.from },
      max: { ...first.max, [u]: across.to, [v]: up.to },
    })),
  );
}

/** True when the patches, which do not overlap, fill the rectangle. */
function covered(rectangle: Box, patches: readonly Box[], axis: Axis): boolean {
  const filled = patches.reduce((sum, patch) => sum + sharedArea(rectangle, patch, axis), 0);
  return atMost(faceArea(rectangle, axis), filled);
}

function sharedArea(a: Box, b: Box, axis: Axis): number {
  const [u, v] = otherAxes(axis);
  return Math.max(0, shared(a, b, u)) * Math.max(0, shared(a, b, v));
}

function shared(a: Box, b: Box, axis: Axis): number {
  return Math.min(a.max[axis], b.max[axis]) - Math.max(a.min[axis], b.min[axis]);
}

function makeOne(a: Box, b: Box, axis: Axis): boolean {
  const [u, v] = otherAxes(axis);
  return (sameSpan(a, b, u) && meets(a, b, v)) || (sameSpan(a, b, v) && meets(a, b, u));
}

function adjoins(a: Box, b: Box, axis: Axis): boolean {
  const [u, v] = otherAxes(axis);
  const overU = lessThan(0, shared(a, b, u));
  const overV = lessThan(0, shared(a, b, v));
  return (overU && meets(a, b, v)) || (overV && meets(a, b, u));
}

function sameSpan(a: Box, b: Box, axis: Axis): boolean {
  return sameLength(a.min[axis], b.min[axis]) && sameLength(a.max[axis], b.max[axis]);
}

function meets(a: Box, b: Box, axis: Axis): boolean {
  return sameLength(shared(a, b, axis), 0);
}

function around(a: Box, b: Box): Box {
  return bounds([a, b]) ?? a;
}
