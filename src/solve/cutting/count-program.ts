import type { Work } from '../work.js';
import { recomputePrices, recomputeValues } from './basis.js';
import { type Prices, partsPerCent } from './bound.js';
import { beginAt, type Case, changesOf, countLimitsOf, setLimits } from './cases.js';
import { priceOut, spreadDemands } from './column-generation.js';
import { Columns } from './columns.js';
import { type CountLimits, nextCost, stockLimits } from './count-limits.js';
import { solveDual } from './dual-simplex.js';
import { type LinearProgram, newProgram } from './linear-program.js';
import type { ReducedProblem } from './normalize.js';

/** A program with a row for every number of boards, over columns that are still being made. */
export function newCountProgram(problem: ReducedProblem, known: Columns): LinearProgram {
  const { kinds, total } = stockLimits(problem);
  return newProgram(poolOf(problem, known), {
    demands: spreadDemands(problem.demands),
    kindLimits: kinds,
    total,
  });
}

/** The case that everything begins with: no board used, no limits but those of the stock. */
export function firstCase(program: LinearProgram): Case {
  const head = Array.from({ length: program.rows }, (_, r) => -1 - r);
  const start = { head, atUpper: [] };
  return { from: undefined, change: undefined, start, active: program.active, bound: 0 };
}

/** What solving a case says about plans of at most the target: none, don't know, or prices that prove a bound. */
export type CountEnd =
  | 'ruled-out'
  | 'undecided'
  | { readonly limits: CountLimits; readonly prices: Prices; readonly bound: number };

/** Solves a case, making columns as needed. */
export function solveCase(
  problem: ReducedProblem,
  program: LinearProgram,
  { now, target }: { now: Case; target: number },
  work: Work,
): CountEnd {
  const limits = enterLimits(problem, program, now);
  if (!isPossible(limits)) return 'ruled-out';
  if (!reachBasis(program, now, work)) return 'undecided';
  const enough = target * partsPerCent;
  const { prices, bound, finished } = priceOut(problem, program, { limits, enough }, work);
  const least = nextCost(problem, limits, Math.ceil(bound / partsPerCent));
  if (least > target) return 'ruled-out';
  return finished ? { limits, prices, bound } : 'undecided';
}

/** Gives the program the limits of a case, and returns them. */
function enterLimits(problem: ReducedProblem, program: LinearProgram, now: Case): CountLimits {
  const { kinds, total } = stockLimits(problem);
  kinds.forEach((limits, k) => {
    setLimits(program, { variable: -1 - (program.kindRow[k] as number), limits });
  });
  setLimits(program, { variable: -1 - program.totalRow, limits: total });
  for (const change of changesOf(now)) setLimits(program, change);
  return countLimitsOf(problem, program);
}

/**
 * Solves a case with the columns it knew, whose prices are right; then lets all columns in. False when figures or
 * work gave out.
 */
function reachBasis(program: LinearProgram, now: Case, work: Work): boolean {
  program.active = now.active;
  if (!beginAt(program, now.start, work)) return false;
  if (solveDual(program, Infinity, work).kind !== 'optimal') return false;
  program.active = Int32Array.from(program.lower, (_, j) => j);
  recomputeValues(program);
  recomputePrices(program);
  return true;
}

/** False when the least and most numbers of boards contradict each other. */
function isPossible({ kinds, total }: CountLimits): boolean {
  const fewest = kinds.reduce((sum, [least]) => sum + least, 0);
  const most = kinds.reduce((sum, [, greatest]) => sum + greatest, 0);
  return fewest <= total[1] && most >= total[0];
}

/**
 * The known columns, an empty board of each kind (so that a least number can always be met) and, at a deterrent
 * price, each piece without a board (so that a most number can).
 */
function poolOf(problem: ReducedProblem, known: Columns): Columns {
  const pool = new Columns();
  const lengths = problem.lengths.length;
  for (let j = 0; j < known.size; j++) {
    pool.add(known.kind[j] as number, known.cost[j] as number, known.counts(j, lengths));
  }
  for (const [k, kind] of problem.kinds.entries()) pool.add(k, kind.cost, []);
  const dearest = Math.max(...problem.kinds.map(kind => kind.cost));
  for (let i = 0; i < lengths; i++) {
    const counts = problem.lengths.map((_, other) => (other === i ? 1 : 0));
    pool.add(problem.kinds.length, 3 * dearest + 1, counts);
  }
  return pool;
}
