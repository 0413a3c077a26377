import type { Columns } from './columns.js';
import type { Limits } from './count-limits.js';

/**
 * Least cost of columns that satisfy rows between two limits each. Rows are, in this order: one for each length
 * (pieces cut), then `countRows`: boards of one kind, or of all kinds (-1), then extra rows whose members are
 * marked. A row's own sum is a variable as well ("sum variable"); in `head` column j is j and row r is -1 - r.
 */
export type LinearProgram = {
  readonly columns: Columns;
  readonly lengths: number;
  rows: number;
  /** Row of each board kind, or -1. */
  readonly kindRow: readonly number[];
  /** Row of all boards, or -1. */
  readonly totalRow: number;
  /** Members of the extra rows, by column. */
  readonly extra: Uint8Array[];
  readonly rowLower: number[];
  readonly rowUpper: number[];
  readonly lower: number[];
  readonly upper: number[];
  /** Columns in play; all others are 0. Basic columns are always in play. */
  active: Int32Array;
  /** Which variable is basic in each place. */
  head: number[];
  /** Place of a basic variable, or -1. */
  readonly columnPlace: number[];
  readonly rowPlace: number[];
  /** Where a variable that is not basic rests. */
  readonly columnAtUpper: boolean[];
  readonly rowAtUpper: boolean[];
  /** Inverse of the basis, row by row. */
  inverse: Float64Array;
  /** Values of the basic variables. */
  basic: Float64Array;
  /** Reduced costs; those of the rows are their dual prices. */
  readonly reduced: number[];
  readonly dual: number[];
  pivots: number;
};

/** In place of a row: columns of this kind (the number after the last kind) are no boards and are not counted. */
const noBoard = -2;

/** Rows to begin with: demands, and limits on the boards of each kind when they are wanted. */
export type RowPlan = {
  readonly demands: readonly number[];
  /** Row wanted for kind k? Its limits. */
  readonly kindLimits: readonly (Limits | undefined)[];
  /** Row wanted for all boards? Its limits. */
  readonly total?: Limits;
};

/** A program with no extra rows, every sum variable basic and every column at its lower limit of 0. */
export function newProgram(
  columns: Columns,
  { demands, kindLimits, total }: RowPlan,
): LinearProgram {
  const rowLower = [...demands];
  const rowUpper = demands.map(() => Infinity);
  const kindRow = kindLimits.map(limits => {
    if (limits === undefined) return -1;
    rowLower.push(limits[0]);
    rowUpper.push(limits[1]);
    return rowLower.length - 1;
  });
  if (total !== undefined) {
    rowLower.push(total[0]);
    rowUpper.push(total[1]);
  }
  const rows = rowLower.length;
  const program: LinearProgram = {
    columns,
    lengths: demands.length,
    rows,
    kindRow: [...kindRow, noBoard],
    totalRow: total === undefined ? -1 : rows - 1,
    extra: [],
    rowLower,
    rowUpper,
    lower: [],
    upper: [],
    active: new Int32Array(0),
    head: [],
    columnPlace: [],
    rowPlace: rowLower.map(() => -1),
    columnAtUpper: [],
    rowAtUpper: rowLower.map(() => false),
    inverse: new Float64Array(0),
    basic: new Float64Array(0),
    reduced: [],
    dual: rowLower.map(() => 0),
    pivots: 0,
  };
  admitColumns(program);
  return program;
}

/** Lets the program know of columns added since the last call, and puts all of them in play. */
export function admitColumns(program: LinearProgram): void {
  for (let j = program.lower.length; j < program.columns.size; j++) {
    program.lower.push(0);
    program.upper.push(Infinity);
    program.columnPlace.push(-1);
    program.columnAtUpper.push(false);
    program.reduced.push(0);
  }
  const active = new Int32Array(program.columns.size);
  for (let j = 0; j < active.length; j++) active[j] = j;
  program.active = active;
}

/** Adds a row that counts the marked columns, without limits yet. Returns its number. */
export function addExtraRow(program: LinearProgram, members: Uint8Array): number {
  program.extra.push(members);
  program.rowLower.push(0);
  program.rowUpper.push(Infinity);
  program.rowPlace.push(-1);
  program.rowAtUpper.push(false);
  program.dual.push(0);
  return program.rows++;
}

/** Sum over the rows of column j times `prices` (from `at` on). */
export function columnDot(
  program: LinearProgram,
  j: number,
  prices: Float64Array,
  at: number,
): number {
  const { start, piece, amount, kind } = program.columns;
  let sum = 0;
  const end = start[j + 1] as number;
  for (let k = start[j] as number; k < end; k++) {
    sum += (amount[k] as number) * (prices[at + (piece[k] as number)] as number);
  }
  const kindRow = program.kindRow[kind[j] as number] as number;
  if (kindRow >= 0) sum += prices[at + kindRow] as number;
  if (program.totalRow >= 0 && kindRow > noBoard) sum += prices[at + program.totalRow] as number;
  const firstExtra = program.rows - program.extra.length;
  for (let e = 0; e < program.extra.length; e++) {
    if ((program.extra[e] as Uint8Array)[j] === 1) sum += prices[at + firstExtra + e] as number;
  }
  return sum;
}

/** Writes `factor` times the entries of a variable's column onto `target`. */
export function addColumn(
  program: LinearProgram,
  variable: number,
  factor: number,
  target: Float64Array,
): void {
  if (variable < 0) {
    const row = -1 - variable;
    target[row] = (target[row] as number) - factor;
    return;
  }
  const { start, piece, amount, kind } = program.columns;
  const end = start[variable + 1] as number;
  for (let k = start[variable] as number; k < end; k++) {
    const row = piece[k] as number;
    target[row] = (target[row] as number) + factor * (amount[k] as number);
  }
  const { kindRow, totalRow, extra } = program;
  const own = kindRow[kind[variable] as number] as number;
  if (own >= 0) target[own] = (target[own] as number) + factor;
  if (totalRow >= 0 && own > noBoard) target[totalRow] = (target[totalRow] as number) + factor;
  const firstExtra = program.rows - extra.length;
  for (let e = 0; e < extra.length; e++) {
    if ((extra[e] as Uint8Array)[variable] !== 1) continue;
    target[firstExtra + e] = (target[firstExtra + e] as number) + factor;
  }
}

/** Where a variable that is not basic rests now. */
export function restingValue(program: LinearProgram, variable: number): number {
  if (variable < 0) {
    const row = -1 - variable;
    return (program.rowAtUpper[row] ? program.rowUpper[row] : program.rowLower[row]) as number;
  }
  return (
    program.columnAtUpper[variable] ? program.upper[variable] : program.lower[variable]
  ) as number;
}

/** Lower limit of a variable. */
export function lowerOf(program: LinearProgram, variable: number): number {
  return (variable < 0 ? program.rowLower[-1 - variable] : program.lower[variable]) as number;
}

/** Upper limit of a variable. */
export function upperOf(program: LinearProgram, variable: number): number {
  return (variable < 0 ? program.rowUpper[-1 - variable] : program.upper[variable]) as number;
}

/** Both limits of a variable. */
export function limitsOf(program: LinearProgram, variable: number): Limits {
  return [lowerOf(program, variable), upperOf(program, variable)];
}

/** Value of every column. */
export function columnValues(program: LinearProgram): Float64Array {
  const values = new Float64Array(program.columns.size);
  for (const j of program.active) {
    const place = program.columnPlace[j] as number;
    values[j] = place >= 0 ? (program.basic[place] as number) : restingValue(program, j);
  }
  return values;
}
