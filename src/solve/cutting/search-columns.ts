import { isSpent, type Work } from '../work.js';
import { partsPerCent } from './bound.js';
import { chooseFraction, chooseNarrowest } from './branching.js';
import { type Case, halves, OpenCases } from './cases.js';
import { type Aim, ColumnCase } from './column-case.js';
import type { Columns } from './columns.js';
import type { Use } from './greedy.js';
import { columnValues } from './linear-program.js';
import type { ReducedProblem } from './normalize.js';

/**
 * What a search found: the cheapest plan of at most the target cost, if any; whether every other one was ruled out
 * (`complete`); and in how many cases.
 */
export type SearchResult = {
  readonly uses: readonly Use[] | undefined;
  readonly cost: number;
  readonly complete: boolean;
  readonly cases: number;
};

/**
 * Branch and bound over listed patterns. A case is dropped only on a bound added up in whole numbers, so what it
 * says was ruled out does not hang on rounding.
 */
export function searchColumns(
  problem: ReducedProblem,
  columns: Columns,
  aim: Aim,
  work: Work,
): SearchResult {
  const at = new ColumnCase(problem, columns, aim, work);
  const open = new OpenCases();
  const extraRows = new Map<string, number>();
  let result: SearchResult = { uses: undefined, cost: Infinity, complete: true, cases: 0 };

  /** Settles one case, or splits it and returns the half to look at next. */
  const look = (now: Case, continues: boolean): Case | undefined => {
    result = { ...result, cases: result.cases + 1 };
    const end = at.solve(now, continues);
    if (end === 'undecided') result = { ...result, complete: false };
    if (end !== 'solved') return undefined;
    const fraction = aim.refutes
      ? chooseNarrowest(at.program)
      : chooseFraction(at.program, extraRows);
    if (fraction === undefined) {
      result = withPlan(problem, at, result);
      return undefined;
    }
    const bound = Math.max(now.bound, at.dropColumns());
    const [first, second] = halves(at.program, now, { ...fraction, bound });
    open.keep(second);
    return first;
  };

  let next: Case | undefined = at.first();
  let previous: Case | undefined;
  while (next !== undefined && result.cost > aim.floor) {
    if (isSpent(work)) return { ...result, complete: false };
    const now: Case = next;
    const isTooDear = now.bound > at.target * partsPerCent;
    const continues = now.from !== undefined && now.from === previous;
    next = (isTooDear ? undefined : look(now, continues)) ?? open.take();
    previous = now;
  }
  return result;
}

/** Takes the whole solution at hand for the best plan; from now on only cheaper ones are of interest. */
function withPlan(problem: ReducedProblem, at: ColumnCase, result: SearchResult): SearchResult {
  const { columns } = at.program;
  const uses: Use[] = [];
  let cost = 0;
  columnValues(at.program).forEach((value, j) => {
    const times = Math.round(value);
    if (times === 0) return;
    const counts = columns.counts(j, problem.lengths.length);
    uses.push({ pattern: { kind: columns.kind[j] as number, counts }, times });
    cost += times * (columns.cost[j] as number);
  });
  if (cost > at.target || !isPlan(problem, uses)) return { ...result, complete: false };
  at.target = cost - 1;
  return { ...result, uses, cost };
}

function isPlan(problem: ReducedProblem, uses: readonly Use[]): boolean {
  const enough = problem.demands.every((demand, i) => {
    const cut = uses.reduce((sum, { pattern, times }) => sum + times * (pattern.counts[i] ?? 0), 0);
    return cut >= demand;
  });
  const inStock = problem.kinds.every(({ available }, k) => {
    const taken = uses.reduce(
      (sum, { pattern, times }) => sum + (pattern.kind === k ? times : 0),
      0,
    );
    return taken <= available;
  });
  return enough && inStock;
}
