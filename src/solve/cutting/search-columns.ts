import { recomputeValues } from './basis.js';
import { partsPerCent } from './bound.js';
import { chooseFraction } from './branching.js';
import type { Case, Change } from './cases.js';
import { beginAt, changesOf, countLimitsOf, halves, OpenCases, setLimits } from './cases.js';
import type { Columns } from './columns.js';
import type { CountLimits } from './count-limits.js';
import { nextCost } from './count-limits.js';
import type { DualEnd } from './dual-simplex.js';
import { solveDual } from './dual-simplex.js';
import type { Use } from './greedy.js';
import { costOf } from './greedy.js';
import type { LinearProgram } from './linear-program.js';
import { columnValues, limitsOf, newProgram } from './linear-program.js';
import { nodeBound, stillUsable } from './node-bound.js';
import type { ReducedProblem } from './normalize.js';
import type { Work } from './work.js';
import { isSpent } from './work.js';

/**
 * What the search found: the cheapest plan of at most the target cost, if any; whether every other one was ruled
 * out (`complete`); and in how many cases.
 */
export type SearchResult = {
  readonly uses: readonly Use[] | undefined;
  readonly cost: number;
  readonly complete: boolean;
  readonly cases: number;
};

/** What is searched for: plans within the limits of at most `target` cents; nothing can beat `floor`. */
export type Aim = {
  readonly limits: CountLimits;
  readonly target: number;
  readonly floor: number;
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
  const search = new Search(problem, columns, aim, work);
  search.run(aim.floor);
  return search.result();
}

class Search {
  private readonly program: LinearProgram;
  private readonly extraRows = new Map<string, number>();
  private readonly stock: readonly Change[];
  private readonly open = new OpenCases();
  private target: number;
  private best: readonly Use[] | undefined;
  private bestCost = Infinity;
  private cases = 0;
  private complete = true;

  constructor(
    private readonly problem: ReducedProblem,
    private readonly columns: Columns,
    { limits, target }: Aim,
    private readonly work: Work,
  ) {
    this.program = newProgram(columns, {
      demands: problem.demands,
      kindLimits: limits.kinds,
      total: limits.total,
    });
    this.target = target;
    this.stock = Array.from({ length: this.program.rows }, (_, r) => ({
      variable: -1 - r,
      limits: limitsOf(this.program, -1 - r),
    }));
  }

  run(floor: number): void {
    const head = Array.from({ length: this.program.rows }, (_, r) => -1 - r);
    const { active } = this.program;
    const start = { head, atUpper: [] };
    let next: Case | undefined = { from: undefined, change: undefined, start, active, bound: 0 };
    let previous: Case | undefined;
    while (next !== undefined && this.bestCost > floor) {
      if (isSpent(this.work)) {
        this.complete = false;
        return;
      }
      const now: Case = next;
      const continues = now.from !== undefined && now.from === previous;
      next = this.look(now, continues) ?? this.open.take();
      previous = now;
    }
  }

  result(): SearchResult {
    return { uses: this.best, cost: this.bestCost, complete: this.complete, cases: this.cases };
  }

  /** Settles one case, or splits it and returns the half to look at next. */
  private look(now: Case, continues: boolean): Case | undefined {
    if (now.bound > this.target * partsPerCent) return undefined;
    this.cases++;
    if (!this.enter(now, continues)) return this.giveUp();
    const end = solveDual(this.program, this.target + 1e-3, this.work);
    if (end.kind === 'stopped') return this.giveUp();
    if (this.isRuledOut(end)) return undefined;
    if (end.kind !== 'optimal') return this.giveUp();
    const fraction = chooseFraction(this.program, this.extraRows);
    if (fraction === undefined) {
      this.record();
      return undefined;
    }
    const bound = Math.max(now.bound, this.dropColumns());
    const [first, second] = halves(this.program, now, { ...fraction, bound });
    this.open.keep(second);
    return first;
  }

  /** Leaves a case undecided: then the search proves nothing. */
  private giveUp(): undefined {
    this.complete = false;
    return undefined;
  }

  /** Brings the program to a case. A case that continues the last one starts from the basis at hand. */
  private enter(now: Case, continues: boolean): boolean {
    const { program } = this;
    if (continues && now.change !== undefined && program.basic.length === program.rows) {
      setLimits(program, now.change);
      recomputeValues(program);
      return true;
    }
    for (let r = 0; r < program.rows; r++) {
      setLimits(program, this.stock[r] ?? { variable: -1 - r, limits: [0, Infinity] });
    }
    program.lower.fill(0);
    program.upper.fill(Infinity);
    for (const change of changesOf(now)) setLimits(program, change);
    program.active = now.active;
    return beginAt(program, now.start, this.work);
  }

  /** True when whole numbers show that nothing within these limits costs the target or less. */
  private isRuledOut(end: DualEnd): boolean {
    const { program } = this;
    if (end.kind === 'optimal' && end.cost <= this.target + 1e-6) {
      const cents = Math.ceil(end.cost - 1e-6);
      if (nextCost(this.problem, countLimitsOf(this.problem, program), cents) <= this.target) {
        return false;
      }
    }
    const prices = new Float64Array(program.dual);
    if (end.kind === 'infeasible') {
      // Any multiple of this row may be added to the prices; enough of it lifts the bound over the target.
      const { shortfall, place } = end;
      const times = (Math.max(0, this.target + 2 - end.cost) + 1) / shortfall;
      const n = program.rows;
      for (let r = 0; r < n; r++) {
        prices[r] = (prices[r] as number) + times * (program.inverse[place * n + r] as number);
      }
    }
    return this.isTooDear(nodeBound(program, this.problem.demands, prices).bound);
  }

  /** Takes columns out of play that would lift every solution within these limits over the target. */
  private dropColumns(): number {
    const { program } = this;
    const found = nodeBound(program, this.problem.demands, new Float64Array(program.dual));
    if (Number.isNaN(found.bound)) return 0;
    program.active = stillUsable(program, found, this.target * partsPerCent);
    return found.bound;
  }

  /** True when no sum of prices within the present limits lies between the bound and the target. */
  private isTooDear(bound: number): boolean {
    const cents = Math.ceil(bound / partsPerCent);
    if (cents > this.target) return true;
    return nextCost(this.problem, countLimitsOf(this.problem, this.program), cents) > this.target;
  }

  private record(): void {
    const uses: Use[] = [];
    columnValues(this.program).forEach((value, j) => {
      const times = Math.round(value);
      if (times === 0) return;
      const counts = this.columns.counts(j, this.problem.lengths.length);
      uses.push({ pattern: { kind: this.columns.kind[j] as number, counts }, times });
    });
    const cost = costOf(this.problem, uses);
    if (cost > this.target || !isPlan(this.problem, uses)) {
      this.complete = false;
      return;
    }
    this.best = uses;
    this.bestCost = cost;
    this.target = cost - 1;
  }
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
