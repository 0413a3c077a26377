import type { Work } from '../work.js';
import { spend } from '../work.js';
import type { LinearProgram } from './linear-program.js';
import { addColumn, columnDot, restingValue } from './linear-program.js';
import { Slate } from './slate.js';

const forColumn = new Slate();
const forEntries = new Slate();
const forPlaces = new Slate();
const forRest = new Slate();
const forPrices = new Slate();

/** Makes the given variables basic and works everything out afresh. False when they depend on each other. */
export function setBasis(program: LinearProgram, head: readonly number[], work: Work): boolean {
  program.columnPlace.fill(-1);
  program.rowPlace.fill(-1);
  program.head = [...head];
  for (const [place, variable] of head.entries()) setPlace(program, variable, place);
  return refactor(program, work);
}

/** Inverts the basis afresh and recomputes values and prices. False when the basis has no inverse. */
export function refactor(program: LinearProgram, work: Work): boolean {
  const n = program.rows;
  if (program.inverse.length !== n * n) {
    program.inverse = new Float64Array(n * n);
    program.basic = new Float64Array(n);
  }
  program.pivots = 0;
  if (!invert(program)) return false;
  recomputeValues(program);
  recomputePrices(program);
  const columns = program.head.reduce((sum, variable) => (variable < 0 ? sum : sum + 1), 0);
  spend(work, n * n * (1 + columns / 3) + program.active.length * (4 + program.extra.length));
  return true;
}

/**
 * Gauss-Jordan elimination that starts from all sum variables basic (inverse: minus the unit matrix) and brings
 * in one column after the other, so that only columns that are no sum variables cost anything.
 */
function invert(program: LinearProgram): boolean {
  const n = program.rows;
  const wanted = program.head;
  const { inverse } = program;
  inverse.fill(0);
  const owner = new Array<number>(n);
  const free = new Array<boolean>(n).fill(true);
  for (let r = 0; r < n; r++) {
    inverse[r * n + r] = -1;
    owner[r] = -1 - r;
  }
  for (const variable of wanted) if (variable < 0) free[-1 - variable] = false;
  const column = forColumn.asLeft(n);
  for (const variable of wanted) {
    if (variable < 0) continue;
    solveColumn(program, variable, column);
    let place = -1;
    let largest = 1e-9;
    for (let r = 0; r < n; r++) {
      const size = Math.abs(column[r] as number);
      if (free[r] && size > largest) [place, largest] = [r, size];
    }
    if (place < 0) return false;
    free[place] = false;
    owner[place] = variable;
    eliminate(inverse, n, place, column);
  }
  program.head = owner;
  for (const [place, variable] of owner.entries()) setPlace(program, variable, place);
  return true;
}

/** Inverse times the column of a variable. */
export function solveColumn(program: LinearProgram, variable: number, result: Float64Array): void {
  const n = program.rows;
  const { inverse } = program;
  const entries = forEntries.clean(n);
  addColumn(program, variable, 1, entries);
  result.fill(0, 0, n);
  for (let i = 0; i < n; i++) {
    const entry = entries[i] as number;
    if (entry === 0) continue;
    for (let r = 0, at = i; r < n; r++, at += n) {
      result[r] = (result[r] as number) + entry * (inverse[at] as number);
    }
  }
}

/** Updates the inverse after the variable with solved column `column` became basic in `place`. */
function eliminate(inverse: Float64Array, n: number, place: number, column: Float64Array): void {
  const from = place * n;
  const pivot = column[place] as number;
  // Most rows of an inverse are mostly zeros: only the places that are not are touched.
  const filled = forPlaces.asLeft(n);
  let size = 0;
  for (let i = 0; i < n; i++) {
    const entry = inverse[from + i] as number;
    if (entry === 0) continue;
    inverse[from + i] = entry / pivot;
    filled[size++] = i;
  }
  for (let r = 0; r < n; r++) {
    const factor = column[r] as number;
    if (r === place || factor === 0) continue;
    const to = r * n;
    for (let at = 0; at < size; at++) {
      const i = filled[at] as number;
      inverse[to + i] = (inverse[to + i] as number) - factor * (inverse[from + i] as number);
    }
  }
}

/** Values of the basic variables from where all others rest. */
export function recomputeValues(program: LinearProgram): void {
  const n = program.rows;
  const rest = forRest.clean(n);
  for (let r = 0; r < n; r++) {
    if (program.rowPlace[r] === -1)
      addColumn(program, -1 - r, -restingValue(program, -1 - r), rest);
  }
  for (const j of program.active) {
    if (program.columnPlace[j] !== -1) continue;
    const value = restingValue(program, j);
    if (value !== 0) addColumn(program, j, -value, rest);
  }
  for (let r = 0; r < n; r++) {
    let sum = 0;
    for (let i = 0; i < n; i++) sum += (program.inverse[r * n + i] as number) * (rest[i] as number);
    program.basic[r] = sum;
  }
}

/** Dual prices of the rows and reduced costs of the columns. */
export function recomputePrices(program: LinearProgram): void {
  const n = program.rows;
  const prices = forPrices.clean(n);
  for (let place = 0; place < n; place++) {
    const variable = program.head[place] as number;
    const cost = variable < 0 ? 0 : (program.columns.cost[variable] as number);
    if (cost === 0) continue;
    for (let i = 0; i < n; i++) {
      prices[i] = (prices[i] as number) + cost * (program.inverse[place * n + i] as number);
    }
  }
  for (let r = 0; r < n; r++)
    program.dual[r] = program.rowPlace[r] === -1 ? (prices[r] as number) : 0;
  for (const j of program.active) {
    program.reduced[j] =
      program.columnPlace[j] === -1
        ? (program.columns.cost[j] as number) - columnDot(program, j, prices, 0)
        : 0;
  }
}

/** A change of basis: who leaves from which place, where it comes to rest, and who enters. */
export type Pivot = {
  readonly place: number;
  readonly entering: number;
  readonly leavesAtUpper: boolean;
  /** The row of the leaving place over all columns and sum variables that are not basic. */
  readonly row: { readonly columns: Float64Array; readonly rows: Float64Array };
  /** The solved column of the entering variable. */
  readonly column: Float64Array;
};

/** Row of `place` in the basis for every variable that is not basic. */
export function tableauRow(program: LinearProgram, place: number, row: Pivot['row']): void {
  const n = program.rows;
  const at = place * n;
  for (let r = 0; r < n; r++) {
    row.rows[r] = program.rowPlace[r] === -1 ? -(program.inverse[at + r] as number) : 0;
  }
  for (const j of program.active) {
    row.columns[j] = program.columnPlace[j] === -1 ? columnDot(program, j, program.inverse, at) : 0;
  }
}

/** Carries a change of basis through values, prices and inverse. */
export function pivot(program: LinearProgram, change: Pivot, work: Work): void {
  const { place, entering, column, row } = change;
  const n = program.rows;
  const leaving = program.head[place] as number;
  const restsAt = leavingRest(program, leaving, change.leavesAtUpper);
  const step = ((program.basic[place] as number) - restsAt) / (column[place] as number);
  const value = restingValue(program, entering) + step;
  for (let r = 0; r < n; r++) {
    program.basic[r] = (program.basic[r] as number) - step * (column[r] as number);
  }
  program.basic[place] = value;
  const ratio = updatePrices(program, entering, row);
  setPlace(program, leaving, -1);
  setPlace(program, entering, place);
  setReduced(program, leaving, -ratio);
  setReduced(program, entering, 0);
  program.head[place] = entering;
  eliminate(program.inverse, n, place, column);
  program.pivots++;
  spend(work, (n * n) / 2 + program.active.length * (5 + program.extra.length));
}

function leavingRest(program: LinearProgram, leaving: number, atUpper: boolean): number {
  if (leaving < 0) program.rowAtUpper[-1 - leaving] = atUpper;
  else program.columnAtUpper[leaving] = atUpper;
  return restingValue(program, leaving);
}

function updatePrices(program: LinearProgram, entering: number, row: Pivot['row']): number {
  const isRow = entering < 0;
  const price = (isRow ? program.dual[-1 - entering] : program.reduced[entering]) as number;
  const entry = (isRow ? row.rows[-1 - entering] : row.columns[entering]) as number;
  const ratio = price / entry;
  for (let r = 0; r < program.rows; r++) {
    program.dual[r] = (program.dual[r] as number) - ratio * (row.rows[r] as number);
  }
  for (const j of program.active) {
    program.reduced[j] = (program.reduced[j] as number) - ratio * (row.columns[j] as number);
  }
  return ratio;
}

function setPlace(program: LinearProgram, variable: number, place: number): void {
  if (variable < 0) program.rowPlace[-1 - variable] = place;
  else program.columnPlace[variable] = place;
}

function setReduced(program: LinearProgram, variable: number, value: number): void {
  if (variable < 0) program.dual[-1 - variable] = value;
  else program.reduced[variable] = value;
}
