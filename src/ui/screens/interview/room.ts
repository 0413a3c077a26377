import type { Context } from '../../screen.js';

/** From here on there is room beside the question for a picture. */
const WIDE = { columns: 100, rows: 24 };

export function hasPicture({ size }: Context): boolean {
  return size.columns >= WIDE.columns && size.rows >= WIDE.rows;
}

/** Columns of the question itself; with a picture it has the left part. */
export function textColumns(at: Context): number {
  const { columns } = at.size;
  return hasPicture(at) ? Math.floor(columns * 0.55) : columns;
}

/** Rows for the options of a question: what its words and its effect leave. */
export function optionRows({ size }: Context): number {
  return Math.max(3, size.rows - 11);
}

/** Rows for the answers to look over: what a heading and the effect leave. */
export function reviewRows({ size }: Context): number {
  return Math.max(3, size.rows - 7);
}
