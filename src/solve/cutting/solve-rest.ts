import type { Work } from '../work.js';
import { recomputeValues } from './basis.js';
import { type Prices, partsPerCent } from './bound.js';
import { priceOut, spreadDemands } from './column-generation.js';
import { nextCost, stockLimits } from './count-limits.js';
import { solveDual } from './dual-simplex.js';
import type { Remainder } from './greedy.js';
import type { LinearProgram } from './linear-program.js';
import type { ReducedProblem } from './normalize.js';

/** The problem that remains. */
export function remaining(problem: ReducedProblem, rest: Remainder): ReducedProblem {
  return {
    ...problem,
    demands: rest.demands,
    kinds: problem.kinds.map((kind, k) => ({ ...kind, available: rest.available[k] ?? 0 })),
  };
}

/** Makes the program ask for what remains only. */
export function setRest(program: LinearProgram, { demands, available }: Remainder): void {
  spreadDemands(demands).forEach((demand, i) => {
    program.rowLower[i] = demand;
  });
  available.forEach((count, k) => {
    const row = program.kindRow[k] as number;
    if (row >= 0) program.rowUpper[row] = count;
  });
}

/** Solves what remains, making columns as needed: prices and their bound, or undefined when it costs over `left` cents. */
export function solveRest(
  problem: ReducedProblem,
  program: LinearProgram,
  { rest, left }: { rest: Remainder; left: number },
  work: Work,
): { prices: Prices; bound: number } | undefined {
  setRest(program, rest);
  recomputeValues(program);
  if (solveDual(program, Infinity, work).kind !== 'optimal') return undefined;
  const now = remaining(problem, rest);
  const limits = stockLimits(now);
  const aim = { limits, enough: left * partsPerCent };
  const { prices, bound } = priceOut(now, program, aim, work);
  const least = nextCost(now, limits, Math.ceil(bound / partsPerCent));
  return least > left ? undefined : { prices, bound };
}
