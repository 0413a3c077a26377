import type { Work } from '../work.js';
import { isSpent } from '../work.js';
import { recomputePrices, recomputeValues, setBasis } from './basis.js';
import type { Prices } from './bound.js';
import { boundOf, repairPrices, wholePrices } from './bound.js';
import { Columns } from './columns.js';
import type { CountLimits } from './count-limits.js';
import { stockLimits } from './count-limits.js';
import type { Use } from './greedy.js';
import type { LinearProgram } from './linear-program.js';
import { admitColumns, newProgram } from './linear-program.js';
import { ColumnMaker } from './make-columns.js';
import type { ReducedProblem } from './normalize.js';
import { solvePrimal } from './primal-simplex.js';
import { addSubstitutes, withoutSubstitutes } from './substitutes.js';

/** The relaxed problem solved: its program, and valid whole prices with the bound they prove. */
export type Relaxation = {
  readonly program: LinearProgram;
  readonly prices: Prices;
  /** In parts of a cent. */
  readonly bound: number;
};

/**
 * Solves the problem with parts of boards allowed, by making patterns as they are needed (P.C. Gilmore and
 * R.E. Gomory, A linear programming approach to the cutting-stock problem, Operations Research 9, 1961, and 11,
 * 1963). `known` patterns are used from the start.
 */
export function relax(problem: ReducedProblem, known: readonly Use[], work: Work): Relaxation {
  const isOneKind = problem.kinds.length === 1;
  const swapping = isOneKind ? relaxSwapping(problem, known, work) : undefined;
  const program = swapping?.clean ?? firstProgram(problem, known, work);
  const aim = { limits: stockLimits(problem), enough: Infinity };
  const priced = priceOut(problem, program, aim, work);
  problem.demands.forEach((demand, i) => {
    program.rowLower[i] = demand;
  });
  recomputeValues(program);
  const best = swapping !== undefined && swapping.bound > priced.bound ? swapping : priced;
  return { program, prices: best.prices, bound: best.bound };
}

/** The program over columns of one length each and the known patterns, every length cut by its own column. */
function firstProgram(
  problem: ReducedProblem,
  known: readonly Use[],
  work: Work,
  swaps = false,
): LinearProgram {
  const columns = new Columns();
  const head = firstColumns(problem, columns);
  for (const { pattern } of known) {
    columns.add(pattern.kind, problem.kinds[pattern.kind]?.cost ?? 0, pattern.counts);
  }
  if (swaps) addSubstitutes(columns, problem.lengths.length, problem.kinds.length);
  const program = newProgram(columns, {
    demands: spreadDemands(problem.demands),
    kindLimits: problem.kinds.map(kind =>
      kind.available < Infinity ? ([-Infinity, kind.available] as const) : undefined,
    ),
  });
  for (let r = problem.lengths.length; r < program.rows; r++) program.rowAtUpper[r] = true;
  const limited = program.kindRow.filter(row => row >= 0).map(row => -1 - row);
  setBasis(program, [...head, ...limited], work);
  return program;
}

/** Solves with substitutes in the program, and returns it without them, for the columns made and the prices found. */
function relaxSwapping(problem: ReducedProblem, known: readonly Use[], work: Work) {
  const program = firstProgram(problem, known, work, true);
  const aim = { limits: stockLimits(problem), enough: Infinity };
  const { prices, bound } = priceOut(problem, program, aim, work);
  return { prices, bound, clean: withoutSubstitutes(program, problem.kinds.length, work) };
}

/** Demands with a tiny, uneven excess, which keeps the simplex method from going in circles. */
export function spreadDemands(demands: readonly number[]): number[] {
  return demands.map((demand, i) => (demand > 0 ? demand + 1e-6 * (1 + ((i * 7) % 13)) : 0));
}

/** One column for each length, of boards filled with it alone, to begin with; returns their numbers. */
function firstColumns(problem: ReducedProblem, columns: Columns): number[] {
  const single = problem.kinds.findIndex(kind => kind.single);
  return problem.lengths.map((length, i) => {
    let best = -1;
    let least = Infinity;
    let most = 0;
    problem.kinds.forEach((kind, k) => {
      if (kind.available < Infinity || kind.single || kind.room < length) return;
      const count = Math.min(Math.floor(kind.room / length), problem.demands[i] ?? 0);
      if (kind.cost / count < least) [best, least, most] = [k, kind.cost / count, count];
    });
    const counts = problem.lengths.map((_, other) => (other === i ? most : 0));
    if (best >= 0) return columns.add(best, problem.kinds[best]?.cost ?? 0, counts);
    counts[i] = 1;
    return columns.add(single, problem.kinds[single]?.cost ?? 0, counts);
  });
}

/**
 * Makes columns until none would lower the cost within the limits, from a program whose values meet all limits.
 * Stops early once the bound passes `enough` parts. Returns valid whole prices and the best bound they prove.
 */
export function priceOut(
  problem: ReducedProblem,
  program: LinearProgram,
  { limits, enough }: { limits: CountLimits; enough: number },
  work: Work,
): { prices: Prices; bound: number; last: Prices; finished: boolean } {
  const maker = new ColumnMaker(problem, program.columns);
  const nothing: Prices = {
    worth: problem.lengths.map(() => 0),
    rent: problem.kinds.map(() => 0),
    boardRent: 0,
  };
  let best = { prices: nothing, bound: boundOf(problem, nothing, limits) };
  while (true) {
    const solved = solvePrimal(program, work);
    const prices = wholePrices(problem, dualsOf(problem, program), limits);
    const mostWorth = maker.add(prices, work);
    const valid = repairPrices(problem, prices, { mostWorth, limits });
    const bound = boundOf(problem, valid, limits);
    if (bound > best.bound) best = { prices: valid, bound };
    const grown = program.lower.length < program.columns.size;
    admitColumns(program);
    if (!grown || !solved || best.bound > enough || isSpent(work))
      return { ...best, last: valid, finished: !grown };
    recomputePrices(program);
  }
}

/** Prices in cents: rents are the dual prices of the count rows, turned around. */
function dualsOf(problem: ReducedProblem, program: LinearProgram): Prices {
  const rentOfRow = (row: number): number => (row < 0 ? 0 : -(program.dual[row] ?? 0));
  return {
    worth: program.dual.slice(0, problem.lengths.length),
    rent: problem.kinds.map((_, k) => rentOfRow(program.kindRow[k] ?? -1)),
    boardRent: rentOfRow(program.totalRow),
  };
}
