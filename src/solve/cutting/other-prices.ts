import type { Work } from '../work.js';
import { isSpent } from '../work.js';
import { recomputeValues } from './basis.js';
import { boundOf, type Prices } from './bound.js';
import { beginAt, startOf } from './cases.js';
import { priceOut, type Relaxation } from './column-generation.js';
import { stockLimits } from './count-limits.js';
import { solveDual } from './dual-simplex.js';
import { fixedNumbers } from './fixed-numbers.js';
import type { ReducedProblem } from './normalize.js';

/** Prices and the bound they prove, in parts of a cent. */
export type Proven = { readonly prices: Prices; readonly bound: number };

/** So much is added to a demand at most, unevenly, to come to other prices. */
const mostAdded = 0.2;

/**
 * Several valid prices for boards of one kind, each with its bound: a relaxed problem often has many best prices, and
 * each leaves other boards possible. Leaves the relaxed solution as it was.
 */
export function otherPrices(
  problem: ReducedProblem,
  { program }: Relaxation,
  many: number,
  work: Work,
): Proven[] {
  const start = startOf(program);
  const limits = stockLimits(problem);
  const found: Proven[] = [];
  for (let turn = 0; turn < many && !isSpent(work); turn++) {
    const random = fixedNumbers(60_013 + turn);
    problem.demands.forEach((demand, i) => {
      program.rowLower[i] = demand + (mostAdded * (1 + random(1000))) / 1000 / 2 ** (turn % 4);
    });
    recomputeValues(program);
    if (solveDual(program, Infinity, work).kind === 'optimal') {
      const { last } = priceOut(problem, program, { limits, enough: Infinity }, work);
      found.push({ prices: last, bound: boundOf(problem, last, limits) });
    }
    problem.demands.forEach((demand, i) => {
      program.rowLower[i] = demand;
    });
    if (!beginAt(program, start, work)) break;
  }
  return found;
}

/** The average of several valid prices is valid too, and nearer to the middle of all of them. */
export function averageOf(problem: ReducedProblem, all: readonly Proven[]): Proven {
  const mean = (of: (prices: Prices) => number): number =>
    all.reduce((sum, { prices }) => sum + of(prices), 0) / all.length;
  const prices = {
    worth: problem.lengths.map((_, i) => Math.floor(mean(one => one.worth[i] ?? 0))),
    rent: problem.kinds.map(() => 0),
    boardRent: 0,
  };
  return { prices, bound: boundOf(problem, prices, stockLimits(problem)) };
}
