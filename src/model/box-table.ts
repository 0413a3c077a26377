import type { Axis, Box } from './part.js';

/**
 * The boxes of many parts laid out in flat columns, so that a few hundred boards can be compared with
 * each other in a millisecond or two.
 */
export type BoxTable = {
  readonly size: number;
  /** Index of the part that each box belongs to. */
  readonly owner: Int32Array;
  readonly min: Readonly<Record<Axis, Float64Array>>;
  readonly max: Readonly<Record<Axis, Float64Array>>;
};

/** One row for each box of each solid, in the order of the solids. */
export function boxTable(solids: readonly (readonly Box[])[]): BoxTable {
  const size = solids.reduce((sum, solid) => sum + solid.length, 0);
  const column = () => new Float64Array(size);
  const min = { x: column(), y: column(), z: column() };
  const max = { x: column(), y: column(), z: column() };
  const owner = new Int32Array(size);
  let row = 0;
  solids.forEach((solid, part) => {
    for (const box of solid) {
      owner[row] = part;
      min.x[row] = box.min.x;
      min.y[row] = box.min.y;
      min.z[row] = box.min.z;
      max.x[row] = box.max.x;
      max.y[row] = box.max.y;
      max.z[row] = box.max.z;
      row += 1;
    }
  });
  return { size, owner, min, max };
}

/** A number of a column; a row that is not there is a mistake of the caller. */
export function cell(column: Float64Array | Int32Array, row: number): number {
  const value = column[row];
  if (value === undefined) throw new Error(`a table of boxes has no row ${row}`);
  return value;
}

/** Rows in the order of a column, smallest first. */
export function orderBy(column: Float64Array): Int32Array {
  const rows = Int32Array.from({ length: column.length }, (_, row) => row);
  return rows.sort((a, b) => cell(column, a) - cell(column, b));
}
