import type { Relaxation } from './column-generation.js';
import { Columns } from './columns.js';
import type { Use } from './greedy.js';
import { costOf } from './greedy.js';
import { budgetAbove, listPatterns } from './list-patterns.js';
import type { ReducedProblem } from './normalize.js';
import { Rack } from './rack.js';
import { searchColumns } from './search-columns.js';
import type { Work } from './work.js';
import { isSpent } from './work.js';

const mostPatterns = 1500;
const rounds = 4;
/** Settings are counted in this many parts, since costs are whole. */
const parts = 1000;

/**
 * Looks for a plan with the same boards that needs fewer stop settings. A pattern's settings are spread over the
 * boards cut by it: first over as many as could be, then over as many as the last plan cut, so that what is used
 * often looks cheap (slope scaling, after D. Kim and P.M. Pardalos, Operations Research Letters 24, 1999; from
 * memory). The best plan met within the work limit.
 */
export function fewerSettings(
  problem: ReducedProblem,
  { prices, bound }: Relaxation,
  uses: readonly Use[],
  work: Work,
): readonly Use[] {
  const wanted = {
    budget: budgetAbove(bound, costOf(problem, uses)),
    onlyFull: false,
    most: mostPatterns,
  };
  const patterns = listPatterns(problem, prices, wanted, work);
  if (patterns === undefined) return uses;
  const limits = limitsOf(problem, uses);
  let best = { uses, settings: new Rack(problem, uses).settings };
  let last = uses;
  for (let round = 0; round < rounds && !isSpent(work); round++) {
    const columns = spreadSettings(problem, patterns, round === 0 ? [] : last);
    const aim = { limits, target: Number.MAX_SAFE_INTEGER / 4e9, floor: 0, priced: false };
    const share = { done: 0, limit: (work.limit - work.done) / (rounds - round) };
    const found = searchColumns(problem, columns, aim, share);
    work.done += share.done;
    if (found.uses === undefined) return best.uses;
    const { settings } = new Rack(problem, found.uses);
    if (settings < best.settings) best = { uses: found.uses, settings };
    last = found.uses;
  }
  return best.uses;
}

/** Exactly the boards of a plan. */
function limitsOf(problem: ReducedProblem, uses: readonly Use[]) {
  const kinds = problem.kinds.map((_, k) => {
    const taken = uses.reduce(
      (sum, { pattern, times }) => sum + (pattern.kind === k ? times : 0),
      0,
    );
    return [taken, taken] as const;
  });
  const total = uses.reduce((sum, { times }) => sum + times, 0);
  return { kinds, total: [total, total] as const };
}

/** The patterns, each costing its settings divided by the number of boards they serve. */
function spreadSettings(problem: ReducedProblem, patterns: Columns, last: readonly Use[]): Columns {
  const served = new Map<string, number>();
  for (const { pattern, times } of last) {
    const key = pattern.counts.join();
    served.set(key, (served.get(key) ?? 0) + times);
  }
  const columns = new Columns();
  for (let j = 0; j < patterns.size; j++) {
    const counts = patterns.counts(j, problem.lengths.length);
    let boards = Infinity;
    counts.forEach((count, i) => {
      if (count > 0) boards = Math.min(boards, Math.floor((problem.demands[i] ?? 0) / count));
    });
    const settings = counts.filter(count => count > 0).length;
    const now = served.get(counts.join()) ?? boards;
    columns.add(patterns.kind[j] ?? 0, Math.round((parts * settings) / Math.max(1, now)), counts);
  }
  return columns;
}
