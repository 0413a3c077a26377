import { recomputeValues, setBasis } from './basis.js';
import { partsPerCent } from './bound.js';
import { chooseFraction } from './branching.js';
import type { Columns } from './columns.js';
import type { DualEnd } from './dual-simplex.js';
import { solveDual } from './dual-simplex.js';
import type { Use } from './greedy.js';
import type { LinearProgram } from './linear-program.js';
import { columnValues, limitsOf, newProgram } from './linear-program.js';
import { nodeBound, stillUsable } from './node-bound.js';
import type { ReducedProblem } from './normalize.js';
import { nextPriceSum } from './price-sums.js';
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

/** A case still to be looked at: one limit more than the case it came from, and the basis to start from. */
type Case = {
  readonly from: Case | undefined;
  readonly change:
    | { readonly variable: number; readonly limits: readonly [number, number] }
    | undefined;
  readonly start: Start;
  readonly active: Int32Array;
  readonly cost: number;
};

/** A basis to start from: basic variables, and those resting at their upper limit. */
type Start = { readonly head: readonly number[]; readonly atUpper: readonly number[] };

/**
 * Branch and bound over listed patterns for a plan of at most `target` cents; stops early at `floor`, which no
 * plan can beat. A case is dropped only on a bound added up in whole numbers.
 */
export function searchColumns(
  problem: ReducedProblem,
  columns: Columns,
  limits: { readonly target: number; readonly floor: number },
  work: Work,
): SearchResult {
  const search = new Search(problem, columns, limits.target, work);
  search.run(limits.floor);
  return search.result();
}

class Search {
  private readonly program: LinearProgram;
  private readonly extraRows = new Map<string, number>();
  private readonly baseLimits: (readonly [number, number])[];
  /** Cases by falling cost: the next one to look at is the last. */
  private readonly open: Case[] = [];
  private best: readonly Use[] | undefined;
  private bestCost = Infinity;
  private cases = 0;
  private complete = true;

  constructor(
    private readonly problem: ReducedProblem,
    private readonly columns: Columns,
    private target: number,
    private readonly work: Work,
  ) {
    this.program = newProgram(columns, {
      demands: problem.demands,
      kindLimits: problem.kinds.map(kind => [0, kind.available] as const),
      total: true,
    });
    this.baseLimits = Array.from({ length: this.program.rows }, (_, r) =>
      limitsOf(this.program, -1 - r),
    );
  }

  run(floor: number): void {
    const head = Array.from({ length: this.program.rows }, (_, r) => -1 - r);
    const { active } = this.program;
    const start = { head, atUpper: [] };
    const root: Case = { from: undefined, change: undefined, start, active, cost: 0 };
    let next: Case | undefined = root;
    let previous: Case | undefined;
    while (next !== undefined && this.bestCost > floor) {
      if (isSpent(this.work)) {
        this.complete = false;
        return;
      }
      const now: Case = next;
      next = this.look(now, now.from !== undefined && now.from === previous) ?? this.open.pop();
      previous = now;
    }
  }

  result(): SearchResult {
    return { uses: this.best, cost: this.bestCost, complete: this.complete, cases: this.cases };
  }

  /** Settles one case, or splits it and returns the half to look at next. */
  private look(now: Case, continues: boolean): Case | undefined {
    if (now.cost > this.target) return undefined;
    this.cases++;
    if (!this.enter(now, continues)) {
      this.complete = false;
      return undefined;
    }
    const end = solveDual(this.program, this.target + 1e-3, this.work);
    if (end.kind === 'stopped') {
      this.complete = false;
      return undefined;
    }
    if (this.isRuledOut(end)) return undefined;
    if (end.kind !== 'optimal') {
      this.complete = false;
      return undefined;
    }
    const fraction = chooseFraction(this.program, this.extraRows);
    if (fraction === undefined) {
      this.record();
      return undefined;
    }
    this.dropColumns();
    return this.split(now, fraction, end.cost);
  }

  /** Brings the program to a case. A case that continues the last one starts from the basis at hand. */
  private enter(now: Case, continues: boolean): boolean {
    if (continues && now.change !== undefined) {
      setLimits(this.program, now.change.variable, now.change.limits);
      if (this.program.head.length === this.program.rows) {
        recomputeValues(this.program);
        return true;
      }
    } else {
      this.resetLimits(now);
    }
    const { program } = this;
    program.active = now.active;
    program.rowAtUpper.fill(false);
    program.columnAtUpper.fill(false);
    for (const variable of now.start.atUpper) {
      if (variable < 0) program.rowAtUpper[-1 - variable] = true;
      else program.columnAtUpper[variable] = true;
    }
    const head = [...now.start.head];
    for (let r = head.length; r < program.rows; r++) head.push(-1 - r);
    return setBasis(program, head, this.work);
  }

  private resetLimits(now: Case): void {
    const { program } = this;
    for (let r = 0; r < program.rows; r++) {
      setLimits(program, -1 - r, this.baseLimits[r] ?? [0, Infinity]);
    }
    program.lower.fill(0);
    program.upper.fill(Infinity);
    const changes: NonNullable<Case['change']>[] = [];
    for (let at: Case | undefined = now; at !== undefined; at = at.from) {
      if (at.change !== undefined) changes.unshift(at.change);
    }
    for (const { variable, limits } of changes) setLimits(program, variable, limits);
  }

  /** True when whole numbers show that nothing within these limits costs the target or less. */
  private isRuledOut(end: DualEnd): boolean {
    if (end.kind === 'optimal' && this.nextSum(Math.ceil(end.cost - 1e-6)) <= this.target)
      return false;
    const prices = Float64Array.from(this.program.dual);
    if (end.kind === 'infeasible') {
      // Any multiple of this row may be added to the prices; enough of it lifts the bound over the target.
      const { shortfall, place } = end;
      const times = (Math.max(0, this.target + 2 - end.cost) + 1) / shortfall;
      const n = this.program.rows;
      for (let r = 0; r < n; r++) {
        prices[r] = (prices[r] as number) + times * (this.program.inverse[place * n + r] as number);
      }
    }
    const { bound } = nodeBound(this.program, this.problem.demands, prices);
    return this.nextSum(Math.ceil(bound / partsPerCent)) > this.target;
  }

  /** Takes columns out of play that would lift every solution within these limits over the target. */
  private dropColumns(): void {
    const bound = nodeBound(
      this.program,
      this.problem.demands,
      Float64Array.from(this.program.dual),
    );
    if (Number.isNaN(bound.bound)) return;
    this.program.active = stillUsable(this.program, bound, this.target * partsPerCent);
  }

  private nextSum(cents: number): number {
    const { program } = this;
    const prices = this.problem.kinds.map((kind, k) => {
      const [least, most] = limitsOf(program, -1 - (program.kindRow[k] as number));
      return { cost: kind.cost, least, most };
    });
    const [fewest, most] = limitsOf(program, -1 - program.totalRow);
    return nextPriceSum(cents, prices, fewest === most ? fewest : undefined);
  }

  private record(): void {
    const uses: Use[] = [];
    columnValues(this.program).forEach((value, j) => {
      const times = Math.round(value);
      if (times === 0) return;
      const counts = this.columns.counts(j, this.problem.lengths.length);
      uses.push({ pattern: { kind: this.columns.kind[j] as number, counts }, times });
    });
    const cost = uses.reduce(
      (sum, { pattern, times }) => sum + times * (this.problem.kinds[pattern.kind]?.cost ?? 0),
      0,
    );
    if (cost > this.target || !covers(this.problem, uses)) {
      this.complete = false;
      return;
    }
    this.best = uses;
    this.bestCost = cost;
    this.target = cost - 1;
  }

  private split(
    now: Case,
    { variable, value }: { variable: number; value: number },
    cost: number,
  ): Case {
    const [lower, upper] = limitsOf(this.program, variable);
    const start = this.present();
    const half = (limits: readonly [number, number]): Case => ({
      from: now,
      change: { variable, limits },
      start,
      active: this.program.active,
      cost,
    });
    const below = half([lower, Math.floor(value)]);
    const above = half([Math.ceil(value), upper]);
    const [first, second] = value - Math.floor(value) < 0.5 ? [below, above] : [above, below];
    this.keepOpen(second);
    return first;
  }

  private present(): Start {
    const { program } = this;
    const atUpper: number[] = [];
    program.rowAtUpper.forEach((at, r) => {
      if (at && program.rowPlace[r] === -1) atUpper.push(-1 - r);
    });
    program.columnAtUpper.forEach((at, j) => {
      if (at && program.columnPlace[j] === -1) atUpper.push(j);
    });
    return { head: [...program.head], atUpper };
  }

  /** Keeps the list of open cases in order of falling cost; of equals, the newest comes first. */
  private keepOpen(one: Case): void {
    let low = 0;
    let high = this.open.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.open[middle] as Case).cost >= one.cost) low = middle + 1;
      else high = middle;
    }
    this.open.splice(low, 0, one);
  }
}

function setLimits(
  program: LinearProgram,
  variable: number,
  [lower, upper]: readonly [number, number],
): void {
  if (variable < 0) {
    program.rowLower[-1 - variable] = lower;
    program.rowUpper[-1 - variable] = upper;
  } else {
    program.lower[variable] = lower;
    program.upper[variable] = upper;
  }
}

function covers(problem: ReducedProblem, uses: readonly Use[]): boolean {
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
