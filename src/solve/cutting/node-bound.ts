import { partsPerCent } from './bound.js';
import type { LinearProgram } from './linear-program.js';
import { columnDot } from './linear-program.js';
import { Slate } from './slate.js';

const forWhole = new Slate();
const forLefts = new Slate();

/** The most boards cut by column j that any plan without a needless board can have: enough for all its pieces. */
export function mostUses(program: LinearProgram, demands: readonly number[], j: number): number {
  const { start, piece, amount } = program.columns;
  let most = 0;
  for (let at = start[j] as number; at < (start[j + 1] as number); at++) {
    const demand = demands[piece[at] as number] as number;
    most = Math.max(most, Math.ceil(demand / (amount[at] as number)));
  }
  return most;
}

/** A bound in parts of a cent, and what each column in play loses at the prices behind it (until the next bound). */
export type NodeBound = { readonly bound: number; readonly left: Float64Array };

/**
 * Parts of a cent below which nothing within the present limits of the program can cost, from any row prices (in
 * cents, rounded down to whole parts here). Every figure is whole, so a rounding error in the prices can only
 * make the bound weaker, never wrong. NaN when the figures grow too large to be exact.
 */
export function nodeBound(
  program: LinearProgram,
  demands: readonly number[],
  rowPrices: Float64Array,
): NodeBound {
  const whole = forWhole.asLeft(program.rows);
  let bound = 0;
  let largest = 0;
  const lefts = forLefts.asLeft(program.active.length);
  for (let r = 0; r < program.rows; r++) {
    let price = Math.floor((rowPrices[r] as number) * partsPerCent);
    let limit = (price >= 0 ? program.rowLower[r] : program.rowUpper[r]) as number;
    if (!Number.isFinite(limit)) [price, limit] = [0, 0];
    whole[r] = price;
    bound += price * limit;
    largest += Math.abs(price) * Math.max(1, Math.abs(limit));
  }
  for (let place = 0; place < program.active.length; place++) {
    const j = program.active[place] as number;
    const left =
      (program.columns.cost[j] as number) * partsPerCent - columnDot(program, j, whole, 0);
    const uses =
      left >= 0
        ? (program.lower[j] as number)
        : Math.min(program.upper[j] as number, mostUses(program, demands, j));
    lefts[place] = left;
    bound += left * uses;
    largest += Math.abs(left * uses);
  }
  return { bound: largest < Number.MAX_SAFE_INTEGER ? bound : Number.NaN, left: lefts };
}

/**
 * Takes the price off every length that the boards already settled on (lower limits of columns) cut enough of: the
 * bound stays as high, since those boards lose what the row gains, and other patterns with that length show
 * how needless they are.
 */
export function forgetSettled(
  program: LinearProgram,
  demands: readonly number[],
  rowPrices: Float64Array,
): Float64Array {
  const left = [...demands];
  const { start, piece, amount } = program.columns;
  for (const j of program.active) {
    const times = program.lower[j] as number;
    if (times === 0) continue;
    for (let at = start[j] as number; at < (start[j + 1] as number); at++) {
      const i = piece[at] as number;
      left[i] = (left[i] as number) - times * (amount[at] as number);
    }
  }
  left.forEach((count, i) => {
    if (count <= 0) rowPrices[i] = 0;
  });
  return rowPrices;
}

/**
 * The columns in play that a solution of at most `limit` parts can use once more than their lower limit says: those
 * whose own loss still fits between the bound and the limit.
 */
export function stillUsable(
  program: LinearProgram,
  { bound, left }: NodeBound,
  limit: number,
): Int32Array {
  const { active, lower, columnPlace } = program;
  const stays = (place: number): boolean => {
    const j = active[place] as number;
    return bound + (left[place] as number) <= limit || lower[j] !== 0 || columnPlace[j] !== -1;
  };
  let size = 0;
  for (let place = 0; place < active.length; place++) if (stays(place)) size++;
  if (size === active.length) return active;
  const usable = new Int32Array(size);
  for (let place = 0, at = 0; at < size; place++) {
    if (stays(place)) usable[at++] = active[place] as number;
  }
  return usable;
}
