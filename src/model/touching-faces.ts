import { SAME } from '../measure/tolerance.js';
import { otherAxes } from './box.js';
import { type BoxTable, cell, orderBy } from './box-table.js';
import { AXES, type Axis, type Box } from './part.js';

/** A face of one box lying on a face of another: the upper box stands on the plus side of the plane. */
export type TouchingFaces = {
  readonly lower: number;
  readonly upper: number;
  readonly axis: Axis;
  readonly patch: Box;
};

/**
 * Every pair of boxes of different parts that lie against each other with some area, as rows of the
 * table's owners. Faces are matched along each axis in order of their planes, so only faces in the same
 * plane (within SAME) are compared.
 */
export function touchingFaces(table: BoxTable): readonly TouchingFaces[] {
  const found: TouchingFaces[] = [];
  for (const axis of AXES) sweep(table, axis, found);
  return found;
}

function sweep(table: BoxTable, axis: Axis, found: TouchingFaces[]): void {
  const tops = orderBy(table.max[axis]);
  const bottoms = orderBy(table.min[axis]);
  const [u, v] = otherAxes(axis);
  let first = 0;
  for (const low of tops) {
    const plane = cell(table.max[axis], low);
    while (first < table.size && bottomAt(table, axis, bottoms, first) < plane - SAME) first += 1;
    for (let i = first; i < table.size; i += 1) {
      if (bottomAt(table, axis, bottoms, i) > plane + SAME) break;
      const high = cell(bottoms, i);
      if (cell(table.owner, low) === cell(table.owner, high)) continue;
      if (overlaps(table, u, low, high) && overlaps(table, v, low, high)) {
        found.push(faces(table, { axis, low, high, plane }));
      }
    }
  }
}

function bottomAt(table: BoxTable, axis: Axis, bottoms: Int32Array, i: number): number {
  return cell(table.min[axis], cell(bottoms, i));
}

function overlaps(table: BoxTable, axis: Axis, a: number, b: number): boolean {
  const min = table.min[axis];
  const max = table.max[axis];
  return cell(max, a) - cell(min, b) > SAME && cell(max, b) - cell(min, a) > SAME;
}

function faces(
  table: BoxTable,
  at: { readonly axis: Axis; readonly low: number; readonly high: number; readonly plane: number },
): TouchingFaces {
  const { low, high } = at;
  const { min, max } = table;
  const from = (axis: Axis) => Math.max(cell(min[axis], low), cell(min[axis], high));
  const to = (axis: Axis) => Math.min(cell(max[axis], low), cell(max[axis], high));
  return {
    lower: cell(table.owner, low),
    upper: cell(table.owner, high),
    axis: at.axis,
    patch: {
      min: { x: from('x'), y: from('y'), z: from('z'), [at.axis]: at.plane },
      max: { x: to('x'), y: to('y'), z: to('z'), [at.axis]: at.plane },
    },
  };
}
