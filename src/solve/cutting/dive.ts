import type { Work } from '../work.js';
import { isSpent } from '../work.js';
import { beginAt, type Start, startOf } from './cases.js';
import type { Relaxation } from './column-generation.js';
import { finishDive, type Stage } from './finish-dive.js';
import { fixedNumbers } from './fixed-numbers.js';
import type { Remainder, Use } from './greedy.js';
import { costOf, fillGreedily, wholeProblem } from './greedy.js';
import { columnValues, type LinearProgram } from './linear-program.js';
import type { ReducedProblem } from './normalize.js';
import { setRest, solveRest } from './solve-rest.js';

/** So many dives in a row; each but the very first prefers other boards. */
export const divesInARow = 8;

/**
 * What is known before diving, the cost to stop at, and which dives to make: from number `from` on. `cursory`: one dive,
 * whose last boards are not searched.
 */
export type DiveAim = {
  readonly known: readonly Use[];
  readonly floor: number;
  readonly from?: number;
  readonly cursory?: boolean;
};

/**
 * Follows the relaxed solution down to a plan: takes its whole boards, or else a board it wants much, solves what
 * remains, and so on. After every step the rest is also filled longest first. Dives again, from fixed start
 * numbers with other preferences, until a plan costs no more than `floor`. Returns the cheapest plan
 * met, `known` when none is cheaper, and leaves the relaxed solution as it was.
 */
export function dive(
  problem: ReducedProblem,
  { program }: Relaxation,
  { known, floor, from = 0, cursory = false }: DiveAim,
  work: Work,
): readonly Use[] {
  const start = startOf(program);
  const turns = cursory ? 1 : divesInARow;
  let best = known;
  for (let turn = from; turn < from + turns && costOf(problem, best) > floor; turn++) {
    if (isSpent(work)) return best;
    const aim = { most: costOf(problem, best) - 1, floor, turn, cursory };
    best = new Dive(problem, program, aim, work).run() ?? best;
    if (!backTo(problem, program, start, work)) return best;
  }
  return best;
}

/** Brings the program back to the relaxed solution of the whole problem. */
function backTo(
  problem: ReducedProblem,
  program: LinearProgram,
  start: Start,
  work: Work,
): boolean {
  setRest(program, wholeProblem(problem));
  return beginAt(program, start, work);
}

class Dive {
  private readonly random: (below: number) => number;
  private readonly taken: Use[] = [];
  private readonly stages: Stage[] = [];
  private rest: Remainder;
  private best: readonly Use[] | undefined;
  private most: number;

  constructor(
    private readonly problem: ReducedProblem,
    private readonly program: LinearProgram,
    private readonly aim: {
      most: number;
      floor: number;
      turn: number;
      cursory: boolean;
    },
    private readonly work: Work,
  ) {
    this.rest = wholeProblem(problem);
    this.most = aim.most;
    this.random = fixedNumbers(20_011 + aim.turn);
  }

  /** The cheapest plan of at most the aimed cost, or undefined. */
  run(): readonly Use[] | undefined {
    do {
      this.take();
      const plan = [...this.taken, ...fillGreedily(this.problem, this.rest)];
      const cost = costOf(this.problem, plan);
      if (cost <= this.most) [this.best, this.most] = [plan, cost - 1];
    } while (this.most >= this.aim.floor && this.solveRest());
    if (this.most < this.aim.floor || this.aim.cursory) return this.best;
    return finishDive(this.problem, this.stages, this.aim.floor, this.work) ?? this.best;
  }

  private take(): void {
    const demands = [...this.rest.demands];
    const available = [...this.rest.available];
    for (const use of this.wantedBoards()) {
      this.taken.push(use);
      use.pattern.counts.forEach((count, i) => {
        demands[i] = Math.max(0, (demands[i] ?? 0) - count * use.times);
      });
      available[use.pattern.kind] = (available[use.pattern.kind] ?? 0) - use.times;
    }
    this.rest = { demands, available };
  }

  /** Whole boards of the relaxed solution; if it has none, one board of a large fraction. */
  private wantedBoards(): Use[] {
    const { columns } = this.program;
    const use = (j: number, times: number): Use => ({
      pattern: {
        kind: columns.kind[j] ?? 0,
        counts: columns.counts(j, this.problem.lengths.length),
      },
      times,
    });
    const whole: Use[] = [];
    let first = 0;
    let most = 0;
    columnValues(this.program).forEach((value, j) => {
      // Later dives leave some of the first whole boards open, or all would end in the same remainder.
      const off = this.aim.turn > 0 && this.taken.length === 0 ? this.random(2) : 0;
      if (value >= 1 + off - 1e-4) whole.push(use(j, Math.floor(value + 1e-4) - off));
      if (value < 1e-4) return;
      const wish = this.aim.turn === 0 ? value : value * (600 + this.random(1000));
      if (wish > most) [first, most] = [j, wish];
    });
    return whole.length > 0 ? whole : [use(first, 1)];
  }

  /** Solves what remains; false when nothing does, or when no plan of interest can come of it. */
  private solveRest(): boolean {
    const { rest, work } = this;
    if (isSpent(work) || rest.demands.every(count => count <= 0)) return false;
    const left = this.most - costOf(this.problem, this.taken);
    const solved = solveRest(this.problem, this.program, { rest, left }, work);
    if (solved !== undefined) this.stages.push({ taken: [...this.taken], rest, ...solved });
    return solved !== undefined;
  }
}
