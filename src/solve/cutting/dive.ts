import type { Relaxation } from './column-generation.js';
import { relax } from './column-generation.js';
import type { Remainder, Use } from './greedy.js';
import { costOf, fillGreedily, wholeProblem } from './greedy.js';
import { columnValues } from './linear-program.js';
import type { ReducedProblem } from './normalize.js';
import type { Work } from './work.js';
import { isSpent } from './work.js';

/**
 * Follows the relaxed solution down to a plan: takes its whole boards, or else the board it wants most, solves
 * what remains afresh, and so on. After every step the rest is also filled longest first; the cheapest plan met
 * is returned. Costs a few relaxations.
 */
export function dive(problem: ReducedProblem, relaxation: Relaxation, work: Work): readonly Use[] {
  const taken: Use[] = [];
  let rest = wholeProblem(problem);
  let now: Relaxation | undefined = relaxation;
  let best: readonly Use[] = [];
  let least = Infinity;
  while (now !== undefined) {
    const next = wantedBoards(problem, rest, now);
    taken.push(...next);
    rest = without(rest, next);
    const plan = [...taken, ...fillGreedily(problem, rest)];
    const cost = costOf(problem, plan);
    if (cost < least) [best, least] = [plan, cost];
    const done = rest.demands.every(count => count <= 0) || isSpent(work);
    now = done ? undefined : relax(remaining(problem, rest), [], work);
  }
  return best;
}

/** The problem of what remains; lengths no longer wanted are left out. */
export function remaining(problem: ReducedProblem, rest: Remainder): ReducedProblem {
  const wanted = wantedLengths(rest);
  return {
    ...problem,
    lengths: wanted.map(i => problem.lengths[i] ?? 0),
    demands: wanted.map(i => rest.demands[i] ?? 0),
    pieces: wanted.map(i => problem.pieces[i] ?? []),
    kinds: problem.kinds.map((kind, k) => ({ ...kind, available: rest.available[k] ?? 0 })),
  };
}

function wantedLengths(rest: Remainder): number[] {
  return [...rest.demands.keys()].filter(i => (rest.demands[i] ?? 0) > 0);
}

/** Whole boards of the relaxed solution of the rest; if it has none, one board of the largest fraction. */
function wantedBoards(problem: ReducedProblem, rest: Remainder, { program }: Relaxation): Use[] {
  const wanted = wantedLengths(rest);
  const values = columnValues(program);
  const use = (j: number, times: number): Use => {
    const counts = problem.lengths.map(() => 0);
    program.columns.counts(j, wanted.length).forEach((count, place) => {
      counts[wanted[place] ?? 0] = count;
    });
    return { pattern: { kind: program.columns.kind[j] ?? 0, counts }, times };
  };
  const whole: Use[] = [];
  let largest = 0;
  values.forEach((value, j) => {
    if (value >= 1 - 1e-6) whole.push(use(j, Math.floor(value + 1e-6)));
    if (value > (values[largest] as number)) largest = j;
  });
  return whole.length > 0 ? whole : [use(largest, 1)];
}

function without(rest: Remainder, uses: readonly Use[]): Remainder {
  const demands = [...rest.demands];
  const available = [...rest.available];
  for (const { pattern, times } of uses) {
    pattern.counts.forEach((count, i) => {
      demands[i] = Math.max(0, (demands[i] ?? 0) - count * times);
    });
    available[pattern.kind] = (available[pattern.kind] ?? 0) - times;
  }
  return { demands, available };
}
