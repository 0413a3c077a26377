import { isSpent, spend, type Work } from '../work.js';
import { recomputeValues } from './basis.js';
import { partsPerCent } from './bound.js';
import { beginAt, type Case, type Change, changesOf, countLimitsOf, setLimits } from './cases.js';
import type { Columns } from './columns.js';
import { type CountLimits, nextCost } from './count-limits.js';
import { type DualEnd, solveDual } from './dual-simplex.js';
import { type LinearProgram, limitsOf, newProgram } from './linear-program.js';
import { forgetSettled, nodeBound, stillUsable } from './node-bound.js';
import type { ReducedProblem } from './normalize.js';

/**
 * What is searched for: plans within the limits of at most `target`; nothing can beat `floor`. `refutes`: the search
 * is there to show that there is no such plan.
 */
export type Aim = {
  readonly limits: CountLimits;
  readonly target: number;
  readonly floor: number;
  readonly refutes?: boolean;
};

/** How a case came out: nothing of at most the target in it, a relaxed solution to split, or undecided. */
export type CaseEnd = 'ruled-out' | 'solved' | 'undecided';

/** The linear program over listed patterns, brought from one case of a search to the next. */
export class ColumnCase {
  readonly program: LinearProgram;
  /** The greatest cost still of interest; falls as plans are found. */
  target: number;
  private readonly stock: readonly Change[];

  constructor(
    private readonly problem: ReducedProblem,
    columns: Columns,
    aim: Aim,
    private readonly work: Work,
  ) {
    const { kinds, total } = aim.limits;
    this.program = newProgram(columns, { demands: problem.demands, kindLimits: kinds, total });
    this.target = aim.target;
    this.stock = Array.from({ length: this.program.rows }, (_, r) => ({
      variable: -1 - r,
      limits: limitsOf(this.program, -1 - r),
    }));
  }

  /** The case that everything begins with: no pattern used, no limits but those of the aim. */
  first(): Case {
    const head = Array.from({ length: this.program.rows }, (_, r) => -1 - r);
    const { active } = this.program;
    const start = { head, atUpper: [] };
    return { from: undefined, change: undefined, start, active, bound: 0 };
  }

  /** Solves a case; one that continues the last one starts from the basis at hand. */
  solve(now: Case, continues: boolean): CaseEnd {
    spend(this.work, this.program.rows);
    const end = this.enter(now, continues) ? this.run() : 'undecided';
    if (end !== 'undecided' || isSpent(this.work)) return end;
    // Figures gave out: once more from the very beginning.
    return this.enter({ ...now, start: this.first().start }, false) ? this.run() : 'undecided';
  }

  private run(): CaseEnd {
    const { program, work } = this;
    let end = solveDual(program, this.target + 1e-3, work);
    if (end.kind === 'cutoff' && !this.isRuledOut(end)) {
      // Rounding can leave the bound a hair short of the target at the cutoff; farther on it may pass.
      end = solveDual(program, Infinity, work);
    }
    if (end.kind !== 'stopped' && this.isRuledOut(end)) return 'ruled-out';
    return end.kind === 'optimal' ? 'solved' : 'undecided';
  }

  /**
   * Takes columns out of play that would lift every solution within these limits over the target, and returns the
   * bound of the case in parts of a cent.
   */
  dropColumns(): number {
    const { program } = this;
    const { demands } = this.problem;
    const prices = forgetSettled(program, demands, new Float64Array(program.dual));
    const found = nodeBound(program, demands, prices);
    if (Number.isNaN(found.bound)) return 0;
    program.active = stillUsable(program, found, this.target * partsPerCent);
    return found.bound;
  }

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
    const relaxed = Math.ceil(end.cost - 1e-6);
    if (end.kind === 'optimal' && relaxed <= this.target && this.nextCost(relaxed) <= this.target) {
      return false;
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
    const { bound } = nodeBound(program, this.problem.demands, prices);
    // Figures too large to be exact rule nothing out.
    if (Number.isNaN(bound)) return false;
    const least = Math.ceil(bound / partsPerCent);
    return least > this.target || this.nextCost(least) > this.target;
  }

  /** The least cost of at least so much that can occur within the present limits. */
  private nextCost(least: number): number {
    return nextCost(this.problem, countLimitsOf(this.problem, this.program), least);
  }
}
