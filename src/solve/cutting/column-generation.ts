import { recomputePrices, recomputeValues, setBasis } from './basis.js';
import type { Prices } from './bound.js';
import { allowance, boundOf, partsPerCent, repairPrices, wholePrices } from './bound.js';
import { Columns } from './columns.js';
import type { Use } from './greedy.js';
import { Knapsack } from './knapsack.js';
import type { LinearProgram } from './linear-program.js';
import { admitColumns, newProgram } from './linear-program.js';
import type { ReducedProblem } from './normalize.js';
import { solvePrimal } from './primal-simplex.js';
import type { Work } from './work.js';
import { isSpent, spend } from './work.js';

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
  const columns = new Columns();
  const head = firstColumns(problem, columns);
  for (const { pattern } of known) {
    columns.add(pattern.kind, problem.kinds[pattern.kind]?.cost ?? 0, pattern.counts);
  }
  const program = newProgram(columns, {
    // A tiny, uneven excess of every demand keeps the simplex method from going in circles.
    demands: problem.demands.map((demand, i) => demand + 1e-6 * (1 + ((i * 7) % 13))),
    kindLimits: problem.kinds.map(kind =>
      kind.available < Infinity ? ([-Infinity, kind.available] as const) : undefined,
    ),
    total: false,
  });
  for (let r = problem.lengths.length; r < program.rows; r++) program.rowAtUpper[r] = true;
  setBasis(
    program,
    [...head, ...program.kindRow.filter(row => row >= 0).map(row => -1 - row)],
    work,
  );
  const { prices, bound } = priceOut(problem, program, work);
  problem.demands.forEach((demand, i) => {
    program.rowLower[i] = demand;
  });
  recomputeValues(program);
  return { program, prices, bound };
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

function priceOut(
  problem: ReducedProblem,
  program: LinearProgram,
  work: Work,
): { prices: Prices; bound: number } {
  const knapsack = new Knapsack();
  let best: { prices: Prices; bound: number } = {
    prices: { worth: problem.lengths.map(() => 0), rent: problem.kinds.map(() => 0) },
    bound: 0,
  };
  let going = true;
  while (going) {
    going = solvePrimal(program, work);
    const prices = wholePrices(
      problem,
      program.dual.slice(0, problem.lengths.length),
      program.kindRow.map(row => (row < 0 ? 0 : -(program.dual[row] ?? 0))),
    );
    const mostWorth = addColumns(problem, program, { prices, knapsack, work });
    const valid = repairPrices(problem, prices, mostWorth);
    const bound = boundOf(problem, valid);
    if (bound > best.bound) best = { prices: valid, bound };
    going &&= program.lower.length < program.columns.size && !isSpent(work);
    admitColumns(program);
    if (going) recomputePrices(program);
  }
  return best;
}

/** Adds the best filling of every kind that is worth more than it costs; returns the most each kind can hold. */
function addColumns(
  problem: ReducedProblem,
  program: LinearProgram,
  { prices, knapsack, work }: { prices: Prices; knapsack: Knapsack; work: Work },
): (number | undefined)[] {
  const real = problem.kinds.filter(kind => !kind.single);
  const targets = real.map((kind, k) => ({ room: kind.room, over: allowance(problem, prices, k) }));
  const goods = { lengths: problem.lengths, demands: problem.demands, worth: prices.worth };
  const fillings = knapsack.solve(goods, targets, work);
  spend(work, 10 * fillings.length);
  fillings.forEach((filling, k) => {
    const kind = real[k];
    if (filling === undefined || kind === undefined) return;
    // An excess of a few parts is only the rounding of the prices.
    const excess = filling.value - allowance(problem, prices, k);
    if (excess > 100 + 1e-9 * kind.cost * partsPerCent) {
      program.columns.add(k, kind.cost, filling.counts);
    }
  });
  return fillings.map(filling => filling?.value);
}
