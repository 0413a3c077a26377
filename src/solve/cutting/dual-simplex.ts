import type { Work } from '../work.js';
import { isSpent } from '../work.js';
import type { Pivot } from './basis.js';
import { pivot, refactor, solveColumn, tableauRow } from './basis.js';
import type { LinearProgram } from './linear-program.js';
import { lowerOf, restingValue, upperOf } from './linear-program.js';
import { Slate } from './slate.js';

const forColumns = new Slate();
const forRows = new Slate();
const forEntering = new Slate();

/** A value may miss its limit by this much; lengths and counts are whole, so it is far below what matters. */
const slack = 1e-7;

/**
 * How a dual simplex run ended. `infeasible` names the place whose limits no solution meets, `shortfall` by how
 * much (negative: too low). `cutoff`: the cost is already above the cutoff. `stopped`: work or figures gave out.
 */
export type DualEnd =
  | { readonly kind: 'optimal' | 'cutoff' | 'stopped'; readonly cost: number }
  | {
      readonly kind: 'infeasible';
      readonly cost: number;
      readonly place: number;
      readonly shortfall: number;
    };

/**
 * Dual simplex with limits on every variable (the method of Lemke, 1954, with steepest edges), from any basis
 * whose prices are right. Every step raises the cost, so it can stop as soon as the cutoff is passed.
 */
export function solveDual(program: LinearProgram, cutoff: number, work: Work): DualEnd {
  const row = {
    columns: forColumns.asLeft(program.columns.size),
    rows: forRows.asLeft(program.rows),
  };
  const column = forEntering.asLeft(program.rows);
  let cost = currentCost(program);
  const mostPivots = 50 + 10 * program.rows;
  for (let step = 0; step < mostPivots && !isSpent(work); step++) {
    if (program.pivots > 60 + program.rows / 2 && !refactor(program, work)) break;
    if (cost > cutoff) return { kind: 'cutoff', cost };
    const place = worstPlace(program);
    if (place < 0) return { kind: 'optimal', cost: currentCost(program) };
    const shortfall = violation(program, place);
    tableauRow(program, place, row);
    const entering = chooseEntering(program, row, shortfall < 0);
    if (entering === undefined) return { kind: 'infeasible', cost, place, shortfall };
    solveColumn(program, entering, column);
    cost += Math.abs(reducedOf(program, entering) * (shortfall / (column[place] as number)));
    pivot(program, { place, entering, leavesAtUpper: shortfall > 0, row, column }, work);
  }
  return { kind: 'stopped', cost };
}

/** Cost of the present values. */
export function currentCost(program: LinearProgram): number {
  const { cost } = program.columns;
  let sum = 0;
  for (const j of program.active) {
    const place = program.columnPlace[j] as number;
    const value = place >= 0 ? (program.basic[place] as number) : restingValue(program, j);
    if (value !== 0) sum += value * (cost[j] as number);
  }
  return sum;
}

/** How far the basic variable in a place is out of its limits: below 0 too low, above 0 too high. */
function violation(program: LinearProgram, place: number): number {
  const value = program.basic[place] as number;
  const variable = program.head[place] as number;
  const lower = lowerOf(program, variable);
  const upper = upperOf(program, variable);
  if (value < lower - slack) return value - lower;
  if (value > upper + slack) return value - upper;
  return 0;
}

/** The place with the largest violation for the length of its row, or -1 when all limits are met. */
function worstPlace(program: LinearProgram): number {
  const n = program.rows;
  let worst = -1;
  let largest = 0;
  for (let place = 0; place < n; place++) {
    const missed = violation(program, place);
    if (missed === 0) continue;
    let length = 0;
    for (let i = place * n; i < (place + 1) * n; i++) {
      length += (program.inverse[i] as number) ** 2;
    }
    const size = (missed * missed) / length;
    if (size > largest) [worst, largest] = [place, size];
  }
  return worst;
}

function reducedOf(program: LinearProgram, variable: number): number {
  return (variable < 0 ? program.dual[-1 - variable] : program.reduced[variable]) as number;
}

/**
 * The variable whose price is used up first when the leaving one is moved to its limit; of those that tie, the
 * one with the largest entry. Undefined when nothing can move it: the limits cannot all be met.
 */
function chooseEntering(
  program: LinearProgram,
  row: Pivot['row'],
  raise: boolean,
): number | undefined {
  let best: number | undefined;
  let bestRatio = Infinity;
  let bestSize = 0;
  const { rows, active, dual, reduced, rowAtUpper, columnAtUpper } = program;
  const count = active.length;
  for (let at = 0; at < rows + count; at++) {
    const isRow = at < rows;
    const index = isRow ? at : (active[at - rows] as number);
    const entry = (isRow ? row.rows[index] : row.columns[index]) as number;
    const size = Math.abs(entry);
    if (size < 1e-9) continue;
    // Raising needs an entry below 0 from a variable that can grow, or above 0 from one that can shrink.
    const atUpper = (isRow ? rowAtUpper[index] : columnAtUpper[index]) as boolean;
    if (entry < 0 !== (raise !== atUpper)) continue;
    const ratio = Math.abs((isRow ? dual[index] : reduced[index]) as number) / size;
    if (ratio > bestRatio + 1e-9 || (ratio > bestRatio - 1e-9 && size <= bestSize)) continue;
    const variable = isRow ? -1 - index : index;
    if (lowerOf(program, variable) === upperOf(program, variable)) continue;
    best = variable;
    bestRatio = ratio;
    bestSize = size;
  }
  return best;
}
