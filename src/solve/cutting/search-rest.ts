import type { Work } from '../work.js';
import { isSpent } from '../work.js';
import { recomputeValues } from './basis.js';
import { partsPerCent } from './bound.js';
import { beginAt, startOf } from './cases.js';
import { priceOut, type Relaxation, relax, spreadDemands } from './column-generation.js';
import { nextCost, stockLimits } from './count-limits.js';
import { solveDual } from './dual-simplex.js';
import { fixedNumbers } from './fixed-numbers.js';
import type { Use } from './greedy.js';
import type { LadderEnd } from './ladder.js';
import { columnValues, type LinearProgram } from './linear-program.js';
import type { ReducedProblem } from './normalize.js';

/** Finds the cheapest plan it can for what remains. */
export type RestSolver = (rest: ReducedProblem, work: Work) => Pick<LadderEnd, 'uses'>;

/** So few pieces left are searched at once, one figure a turn. */
const fewPieces = [64, 90, 48, 76, 56, 110];

/** Whether so many pieces are worth following the relaxed solution to a smaller rest. */
export function hasRest({ demands }: ReducedProblem): boolean {
  return piecesIn(demands) > Math.min(...fewPieces);
}

function piecesIn(demands: readonly number[]): number {
  return demands.reduce((sum, demand) => sum + demand, 0);
}

/** After so many steps that lead nowhere in a row, what is left is searched as it is or given up. */
const mostRetries = 3;

/** More rows than this make steps slow. */
const manyRows = 220;

/** Steps that one search of a rest may take, or a part of the steps left where that is more; a quarter at most. */
const stepsForRest = 60_000_000;
const shareForRest = 0.02;

/**
 * For boards of one kind: follows the relaxed solution, a handful of boards a step, until few pieces are left, and
 * searches the best way to cut these. Returns a plan, of `target` cents if all went well, or undefined when the steps
 * led nowhere. Leaves the relaxed solution as it was.
 */
export function searchRest(
  problem: ReducedProblem,
  { program }: Relaxation,
  { target, turn, solve }: { target: number; turn: number; solve: RestSolver },
  work: Work,
): readonly Use[] | undefined {
  const start = startOf(program);
  const found = new Descent(problem, program, { target, turn, solve }, work).run();
  setDemands(program, problem.demands);
  beginAt(program, start, work);
  return found;
}

function setDemands(program: LinearProgram, demands: readonly number[]): void {
  spreadDemands(demands).forEach((demand, i) => {
    program.rowLower[i] = demand;
  });
}

class Descent {
  private readonly random: (below: number) => number;
  private taken: Use[] = [];
  private demands: readonly number[];
  private left: number;

  constructor(
    private readonly problem: ReducedProblem,
    private readonly program: LinearProgram,
    private readonly aim: { target: number; turn: number; solve: RestSolver },
    private readonly work: Work,
  ) {
    this.demands = problem.demands;
    this.random = fixedNumbers(40_009 + aim.turn);
    this.left = Math.floor(aim.target / this.price);
  }

  run(): readonly Use[] | undefined {
    const most = fewPieces[this.aim.turn % fewPieces.length] as number;
    // A program for half of the pieces is so much smaller that it is worth solving afresh.
    const half = piecesIn(this.problem.demands) / 2;
    const few = Math.max(
      most,
      half > manyRows && this.problem.lengths.length > manyRows ? half : 0,
    );
    for (let retries = 0; piecesIn(this.demands) > few; ) {
      if (isSpent(this.work)) return undefined;
      const over = 1 - few / piecesIn(this.demands);
      if (this.step(Math.ceil((this.left * over) / 8))) retries = 0;
      else if (++retries > mostRetries) break;
    }
    if (piecesIn(this.demands) > 2 * few) return undefined;
    return few > most ? this.startAfresh() : this.searchLeft();
  }

  private get price(): number {
    return this.problem.kinds[0]?.cost ?? 0;
  }

  /** Takes up to so many boards, fewer and other ones while the rest would cost too much. */
  private step(most: number): boolean {
    const [taken, demands, left] = [this.taken, this.demands, this.left];
    const values = columnValues(this.program);
    const start = startOf(this.program);
    for (let count = most; count >= 1; count = Math.floor(count / 2)) {
      this.take(values, count);
      if (this.solveRest()) return true;
      [this.taken, this.demands, this.left] = [taken, demands, left];
      setDemands(this.program, demands);
      if (!beginAt(this.program, start, this.work)) return false;
    }
    return false;
  }

  /** Takes boards of large fractions, one after the other, each as long as all its pieces are still wanted. */
  private take(values: Float64Array, most: number): void {
    const { columns } = this.program;
    const wishes: { j: number; wish: number }[] = [];
    values.forEach((value, j) => {
      if (value > 1e-4) wishes.push({ j, wish: value * (700 + this.random(600)) });
    });
    wishes.sort((a, b) => b.wish - a.wish);
    const demands = [...this.demands];
    const taken = [...this.taken];
    let count = 0;
    for (const { j } of wishes) {
      const counts = columns.counts(j, demands.length);
      const isWanted = counts.every((one, i) => one <= (demands[i] as number));
      if (!isWanted && count > 0) continue;
      counts.forEach((one, i) => {
        counts[i] = Math.min(one, demands[i] as number);
        demands[i] = (demands[i] as number) - (counts[i] as number);
      });
      taken.push({ pattern: { kind: 0, counts }, times: 1 });
      if (++count === most) break;
    }
    this.taken = taken;
    this.demands = demands;
    this.left -= count;
  }

  private solveRest(): boolean {
    const { program, work } = this;
    setDemands(program, this.demands);
    recomputeValues(program);
    if (solveDual(program, Infinity, work).kind !== 'optimal') return false;
    const rest = { ...this.problem, demands: this.demands };
    const limits = stockLimits(rest);
    const cents = this.left * this.price;
    const { bound } = priceOut(rest, program, { limits, enough: cents * partsPerCent }, work);
    return nextCost(rest, limits, Math.ceil(bound / partsPerCent)) <= cents;
  }

  private searchLeft(): readonly Use[] {
    const steps = this.work.limit - this.work.done;
    const limit = Math.min(steps / 4, Math.max(stepsForRest, steps * shareForRest));
    const share = { done: 0, limit };
    const { uses } = this.aim.solve(this.rest, share);
    this.work.done += share.done;
    return this.withTaken(uses);
  }

  /** Solves the program of what is left with rows for that alone, and goes on from there. */
  private startAfresh(): readonly Use[] | undefined {
    const { rest, work } = this;
    const relaxation = relax(rest, [], work);
    const aim = { ...this.aim, target: this.left * this.price };
    const uses = searchRest(rest, relaxation, aim, work);
    return uses === undefined ? undefined : this.withTaken(uses);
  }

  /** Lengths that are still wanted, by their numbers in the whole problem. */
  private get places(): number[] {
    return [...this.demands.keys()].filter(i => (this.demands[i] as number) > 0);
  }

  private get rest(): ReducedProblem {
    const { problem, demands, places } = this;
    const pick = <T>(list: readonly T[]): T[] => places.map(i => list[i] as T);
    return {
      ...problem,
      lengths: pick(problem.lengths),
      demands: pick(demands),
      pieces: pick(problem.pieces),
    };
  }

  /** The boards taken so far and those for what is left. */
  private withTaken(uses: readonly Use[]): readonly Use[] {
    const { problem, places } = this;
    const whole = uses.map(({ pattern, times }) => {
      const counts = problem.lengths.map(() => 0);
      pattern.counts.forEach((count, at) => {
        counts[places[at] as number] = count;
      });
      return { pattern: { kind: pattern.kind, counts }, times };
    });
    return [...this.taken, ...whole];
  }
}
