import type { Relaxation } from './column-generation.js';
import { relax } from './column-generation.js';
import type { Pattern, Remainder, Use } from './greedy.js';
import { costOf, fillGreedily, wholeProblem } from './greedy.js';
import { columnValues } from './linear-program.js';
import type { ReducedProblem } from './normalize.js';
import type { Work } from './work.js';
import { isSpent } from './work.js';

/**
 * Follows the relaxed solution down to a plan: takes its whole boards, or else the board it wants most, solves
 * what remains afresh, and so on. After every step the rest is also filled longest first; the cheapest plan met
 * is returned, at once when it costs no more than `floor`. Costs a few relaxations.
 */
export function dive(
  problem: ReducedProblem,
  relaxation: Relaxation,
  floor: number,
  work: Work,
): readonly Use[] {
  const taken: Use[] = [];
  let rest = wholeProblem(problem);
  let now: Relaxation | undefined = relaxation;
  let best: readonly Use[] = [];
  let least = Infinity;
  while (now !== undefined) {
    const known = patternsOf(problem, rest, now);
    const next = wantedBoards(known, now);
    taken.push(...next);
    rest = without(rest, next);
    const plan = [...taken, ...fillGreedily(problem, rest)];
    const cost = costOf(problem, plan);
    if (cost < least) [best, least] = [plan, cost];
    const done = rest.demands.every(count => count <= 0) || least <= floor || isSpent(work);
    now = done ? undefined : relax(remaining(problem, rest), stillFitting(rest, known), work);
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

/** The patterns of a relaxation of the rest, over all lengths. */
function patternsOf(problem: ReducedProblem, rest: Remainder, { program }: Relaxation): Pattern[] {
  const wanted = wantedLengths(rest);
  return Array.from({ length: program.columns.size }, (_, j) => {
    const counts = problem.lengths.map(() => 0);
    program.columns.counts(j, wanted.length).forEach((count, place) => {
      counts[wanted[place] ?? 0] = count;
    });
    return { kind: program.columns.kind[j] ?? 0, counts };
  });
}

/** Patterns that hold no more than is still wanted, over the lengths still wanted. */
function stillFitting(rest: Remainder, patterns: readonly Pattern[]): Use[] {
  const wanted = wantedLengths(rest);
  return patterns
    .filter(({ counts }) => counts.every((count, i) => count <= (rest.demands[i] ?? 0)))
    .map(({ kind, counts }) => ({
      pattern: { kind, counts: wanted.map(i => counts[i] ?? 0) },
      times: 1,
    }));
}

/** Whole boards of the relaxed solution of the rest; if it has none, one board of the largest fraction. */
function wantedBoards(patterns: readonly Pattern[], { program }: Relaxation): Use[] {
  const values = columnValues(program);
  const use = (j: number, times: number): Use => ({ pattern: patterns[j] as Pattern, times });
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
