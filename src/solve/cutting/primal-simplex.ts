import type { Work } from '../work.js';
import { isSpent } from '../work.js';
import { pivot, recomputeValues, refactor, solveColumn, tableauRow } from './basis.js';
import type { LinearProgram } from './linear-program.js';
import { lowerOf, upperOf } from './linear-program.js';
import { Slate } from './slate.js';

const forColumns = new Slate();
const forRows = new Slate();
const forEntering = new Slate();

/** A price this close to 0 (in cents) counts as 0. */
const priceSlack = 1e-8;

/**
 * Primal simplex from a basis whose values meet all limits (G.B. Dantzig, 1951, revised form) until no column
 * lowers the cost. Columns have no upper limit here. False when work or figures gave out first.
 */
export function solvePrimal(program: LinearProgram, work: Work): boolean {
  const row = {
    columns: forColumns.asLeft(program.columns.size),
    rows: forRows.asLeft(program.rows),
  };
  const column = forEntering.asLeft(program.rows);
  while (!isSpent(work)) {
    if (program.pivots > 60 + program.rows / 2 && !refactor(program, work)) return false;
    const entering = mostPromising(program);
    if (entering === undefined) {
      recomputeValues(program);
      return true;
    }
    solveColumn(program, entering, column);
    const grows = entering >= 0 || !program.rowAtUpper[-1 - entering];
    const leaving = firstToBlock(program, column, grows);
    if (leaving === undefined) return false;
    tableauRow(program, leaving.place, row);
    pivot(program, { ...leaving, entering, row, column }, work);
  }
  return false;
}

/** The variable with the most to gain for each unit, or undefined. */
function mostPromising(program: LinearProgram): number | undefined {
  let best: number | undefined;
  let most = priceSlack;
  for (const j of program.active) {
    const gain = -(program.reduced[j] as number);
    if (gain > most) [best, most] = [j, gain];
  }
  for (let r = 0; r < program.rows; r++) {
    if (program.rowPlace[r] !== -1 || program.rowLower[r] === program.rowUpper[r]) continue;
    const price = program.dual[r] as number;
    const gain = program.rowAtUpper[r] ? price : -price;
    if (gain > most) [best, most] = [-1 - r, gain];
  }
  return best;
}

/** The place whose variable first meets a limit while the entering one moves. */
function firstToBlock(
  program: LinearProgram,
  column: Float64Array,
  grows: boolean,
): { place: number; leavesAtUpper: boolean } | undefined {
  let place = -1;
  let least = Infinity;
  let entry = 0;
  for (let r = 0; r < program.rows; r++) {
    const change = grows ? -(column[r] as number) : (column[r] as number);
    if (Math.abs(change) < 1e-9) continue;
    const variable = program.head[r] as number;
    const value = program.basic[r] as number;
    const room =
      change < 0 ? value - lowerOf(program, variable) : upperOf(program, variable) - value;
    const step = Math.max(0, room) / Math.abs(change);
    const ties = step <= least + 1e-12 && Math.abs(change) > Math.abs(entry);
    if (step < least - 1e-12 || ties) [place, least, entry] = [r, step, change];
  }
  return least === Infinity ? undefined : { place, leavesAtUpper: entry > 0 };
}
