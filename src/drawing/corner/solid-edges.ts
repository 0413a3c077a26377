import type { Mm } from '../../measure/quantities.js';
import { otherAxes, withAxis } from '../../model/box.js';
import { AXES, type Axis, type Box, type Point } from '../../model/part.js';
import { distinct } from '../distinct.js';

/** A straight edge of a board, from a point on along an axis. */
export type Edge = { readonly from: Point; readonly axis: Axis; readonly length: Mm };

/**
 * The edges of a board that is told as boxes that do not overlap: where two of its faces meet, each as
 * long as it can be. Where two boxes go on in one plane, there is no edge between them.
 */
export function solidEdges(solid: readonly Box[]): readonly Edge[] {
  const [only] = solid;
  if (only === undefined) return [];
  if (solid.length === 1) return AXES.flatMap(axis => edgesOfBox(only, axis));
  const grid = gridOf(solid);
  return AXES.flatMap(axis => edgesAlong(axis, grid));
}

function edgesOfBox({ min, max }: Box, axis: Axis): readonly Edge[] {
  const [u, v] = otherAxes(axis);
  const length = max[axis] - min[axis];
  return [min[u], max[u]].flatMap(atU =>
    [min[v], max[v]].map(atV => ({
      from: withAxis(withAxis(min, u, atU), v, atV),
      axis,
      length,
    })),
  );
}

/** The planes of all faces along each axis, and which of the cells between them are wood. */
type Grid = {
  readonly planes: Readonly<Record<Axis, readonly Mm[]>>;
  /** One for wood; a rim of empty cells goes round. */
  readonly wood: Uint8Array;
  /** How far apart two cells are that are neighbors along an axis. */
  readonly step: Readonly<Record<Axis, number>>;
};

function gridOf(solid: readonly Box[]): Grid {
  const along = (axis: Axis) => distinct(solid.flatMap(box => [box.min[axis], box.max[axis]]));
  const lines = { x: along('x'), y: along('y'), z: along('z') };
  const planes = { x: lines.x.values, y: lines.y.values, z: lines.z.values };
  const step = {
    x: 1,
    y: planes.x.length + 1,
    z: (planes.x.length + 1) * (planes.y.length + 1),
  };
  const wood = new Uint8Array(step.z * (planes.z.length + 1));
  const at = (axis: Axis, place: Mm) => (lines[axis].indexOf.get(place) ?? 0) + 1;
  for (const { min, max } of solid) {
    for (let x = at('x', min.x); x < at('x', max.x); x += 1) {
      for (let y = at('y', min.y); y < at('y', max.y); y += 1) {
        for (let z = at('z', min.z); z < at('z', max.z); z += 1) {
          wood[x + y * step.y + z * step.z] = 1;
        }
      }
    }
  }
  return { planes, wood, step };
}

function edgesAlong(axis: Axis, { planes, wood, step }: Grid): readonly Edge[] {
  const [u, v] = otherAxes(axis);
  const edges: Edge[] = [];
  planes[u].forEach((atU, i) => {
    planes[v].forEach((atV, j) => {
      const corner = i * step[u] + j * step[v];
      const isEdge = (k: number) => {
        const cell = corner + (k + 1) * step[axis];
        const lower = (wood[cell] ?? 0) + 2 * (wood[cell + step[u]] ?? 0);
        const upper = (wood[cell + step[v]] ?? 0) + 2 * (wood[cell + step[u] + step[v]] ?? 0);
        return TURNS[lower + 4 * upper] === true;
      };
      for (const [first, last] of runsOf(planes[axis].length - 1, isEdge)) {
        const from = planes[axis][first] ?? 0;
        const length = (planes[axis][last] ?? from) - from;
        const place = { x: from, y: from, z: from };
        edges.push({ from: withAxis(withAxis(place, u, atU), v, atV), axis, length });
      }
    });
  });
  return edges;
}

/**
 * Where a face ends, by which of the four cells round a line are wood (1, 2, 4 and 8 added up): not
 * outside, not inside, not on a flat face, which two cells side by side make.
 */
const FLAT = new Set([0, 3, 5, 10, 12, 15]);
const TURNS = Array.from({ length: 16 }, (_, round) => !FLAT.has(round));

/** Neighboring numbers from 0 that hold, as `[first, after the last]`. */
function runsOf(
  count: number,
  holds: (k: number) => boolean,
): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (let k = 0; k < count; k += 1) {
    if (!holds(k)) continue;
    const last = runs.at(-1);
    if (last !== undefined && last[1] === k) last[1] = k + 1;
    else runs.push([k, k + 1]);
  }
  return runs;
}
