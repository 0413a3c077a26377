import type { Work } from '../work.js';
import { setBasis } from './basis.js';
import type { CountLimits, Limits } from './count-limits.js';
import type { LinearProgram } from './linear-program.js';
import { limitsOf } from './linear-program.js';
import type { ReducedProblem } from './normalize.js';

/** New limits of one variable (named as in `head`). */
export type Change = { readonly variable: number; readonly limits: Limits };

/** A basis to start from: basic variables, and those resting at their upper limit. */
export type Start = { readonly head: readonly number[]; readonly atUpper: readonly number[] };

/** A case still to be looked at: one change more than the case it came from. `bound` is in parts of a cent. */
export type Case = {
  readonly from: Case | undefined;
  readonly change: Change | undefined;
  readonly start: Start;
  /** Columns in play. */
  readonly active: Int32Array;
  readonly bound: number;
};

/** Changes on the way from the first case to this one, first one first. */
export function changesOf(one: Case): Change[] {
  const changes: Change[] = [];
  for (let at: Case | undefined = one; at !== undefined; at = at.from) {
    if (at.change !== undefined) changes.unshift(at.change);
  }
  return changes;
}

/** The two halves of a case that split at a broken value; the nearer one first, of a pattern the one that uses it. */
export function halves(
  program: LinearProgram,
  from: Case,
  { variable, value, bound }: { variable: number; value: number; bound: number },
): [Case, Case] {
  const [lower, upper] = limitsOf(program, variable);
  const start = startOf(program);
  const half = (limits: Limits): Case => ({
    from,
    change: { variable, limits },
    start,
    active: program.active,
    bound,
  });
  const below = half([lower, Math.floor(value)]);
  const above = half([Math.ceil(value), upper]);
  return variable < 0 && value - Math.floor(value) < 0.5 ? [below, above] : [above, below];
}

/** Gives a variable new limits. */
export function setLimits(program: LinearProgram, { variable, limits }: Change): void {
  const [lower, upper] = limits;
  if (variable < 0) {
    program.rowLower[-1 - variable] = lower;
    program.rowUpper[-1 - variable] = upper;
  } else {
    program.lower[variable] = lower;
    program.upper[variable] = upper;
  }
}

/** The basis that the program stands at. */
export function startOf(program: LinearProgram): Start {
  const atUpper: number[] = [];
  program.rowAtUpper.forEach((at, r) => {
    if (at && program.rowPlace[r] === -1) atUpper.push(-1 - r);
  });
  for (const j of program.active) {
    if (program.columnAtUpper[j] && program.columnPlace[j] === -1) atUpper.push(j);
  }
  return { head: [...program.head], atUpper };
}

/** Brings the program to a basis; rows added since have their sum variable basic. False when it has no inverse. */
export function beginAt(program: LinearProgram, start: Start, work: Work): boolean {
  program.rowAtUpper.fill(false);
  program.columnAtUpper.fill(false);
  for (const variable of start.atUpper) {
    if (variable < 0) program.rowAtUpper[-1 - variable] = true;
    else program.columnAtUpper[variable] = true;
  }
  const head = [...start.head];
  for (let r = head.length; r < program.rows; r++) head.push(-1 - r);
  return setBasis(program, head, work);
}

/** Limits on board counts that the rows of the program have now. */
export function countLimitsOf(problem: ReducedProblem, program: LinearProgram): CountLimits {
  return {
    kinds: problem.kinds.map((_, k) => limitsOf(program, -1 - (program.kindRow[k] as number))),
    total: limitsOf(program, -1 - program.totalRow),
  };
}

/** Open cases in order of bound; the lowest comes out first, of equals the newest. */
export class OpenCases {
  private readonly list: Case[] = [];

  get lowestBound(): number {
    return this.list.at(-1)?.bound ?? Infinity;
  }

  take(): Case | undefined {
    return this.list.pop();
  }

  keep(one: Case): void {
    let low = 0;
    let high = this.list.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((this.list[middle] as Case).bound >= one.bound) low = middle + 1;
      else high = middle;
    }
    this.list.splice(low, 0, one);
  }
}
