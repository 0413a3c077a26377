import { recomputePrices, recomputeValues } from './basis.js';
import type { Prices } from './bound.js';
import { partsPerCent } from './bound.js';
import { chooseCount } from './branching.js';
import type { Case } from './cases.js';
import { beginAt, changesOf, countLimitsOf, halves, OpenCases, setLimits } from './cases.js';
import { priceOut } from './column-generation.js';
import { Columns } from './columns.js';
import type { CountLimits } from './count-limits.js';
import { nextCost, stockLimits } from './count-limits.js';
import { solveDual } from './dual-simplex.js';
import type { Use } from './greedy.js';
import type { LinearProgram } from './linear-program.js';
import { columnValues, newProgram } from './linear-program.js';
import { budgetAbove, listPatterns } from './list-patterns.js';
import type { ReducedProblem } from './normalize.js';
import type { SearchResult } from './search-columns.js';
import { searchColumns } from './search-columns.js';
import type { Work } from './work.js';
import { isSpent } from './work.js';

/** The most patterns that are searched at once when no number of boards is left to settle. */
const mostPatterns = 50_000;

/** Plans of at most `target` cents; nothing can beat `floor`; so `few` patterns are searched at once. */
export type CountAim = { readonly target: number; readonly floor: number; readonly few: number };

/**
 * Searches for plans of at most `target` cents by settling numbers of boards first, making patterns as needed for
 * every such case, until the patterns that a case leaves possible are few enough to be listed and searched. For
 * problems whose patterns are too many to list at once.
 */
export function searchCounts(
  problem: ReducedProblem,
  known: Columns,
  aim: CountAim,
  work: Work,
): SearchResult {
  const search = new CountSearch(problem, known, aim, work);
  search.run();
  return search.result();
}

class CountSearch {
  private readonly program: LinearProgram;
  private readonly open = new OpenCases();
  private readonly late = new OpenCases();
  private readonly floor: number;
  private readonly few: number;
  private target: number;
  private best: readonly Use[] | undefined;
  private bestCost = Infinity;
  private cases = 0;
  private complete = true;

  constructor(
    private readonly problem: ReducedProblem,
    known: Columns,
    { target, floor, few }: CountAim,
    private readonly work: Work,
  ) {
    const { kinds, total } = stockLimits(problem);
    this.program = newProgram(poolOf(problem, known), {
      // The same tiny excess of demand as in the first relaxation keeps the steps from going in circles.
      demands: problem.demands.map((demand, i) => demand + 1e-6 * (1 + ((i * 7) % 13))),
      kindLimits: kinds,
      total,
    });
    this.target = target;
    this.floor = floor;
    this.few = few;
  }

  run(): void {
    const head = Array.from({ length: this.program.rows }, (_, r) => -1 - r);
    const { active } = this.program;
    const start = { head, atUpper: [] };
    let next: Case | undefined = { from: undefined, change: undefined, start, active, bound: 0 };
    while (next !== undefined && this.bestCost > this.floor) {
      if (isSpent(this.work)) {
        this.complete = false;
        return;
      }
      next = this.look(next, this.few) ?? this.open.take() ?? this.takeLate();
    }
  }

  /** A case put off for its many patterns; the plans found since may have settled it. */
  private takeLate(): Case | undefined {
    for (let late = this.late.take(); late !== undefined; late = this.late.take()) {
      if (isSpent(this.work)) this.complete = false;
      else this.look(late, mostPatterns);
    }
    return undefined;
  }

  result(): SearchResult {
    return { uses: this.best, cost: this.bestCost, complete: this.complete, cases: this.cases };
  }

  private look(now: Case, most: number): Case | undefined {
    if (now.bound > this.target * partsPerCent) return undefined;
    this.cases++;
    const limits = this.enter(now);
    if (!isPossible(limits)) return undefined;
    if (!this.reachBasis(now)) return this.giveUp();
    const aim = { limits, enough: this.target * partsPerCent };
    const { prices, bound, finished } = priceOut(this.problem, this.program, aim, this.work);
    if (nextCost(this.problem, limits, Math.ceil(bound / partsPerCent)) > this.target) {
      return undefined;
    }
    if (!finished) return this.giveUp();
    if (this.searchListed({ prices, bound, limits }, most)) return undefined;
    if (most === mostPatterns) return this.giveUp();
    const values = columnValues(this.program);
    const fraction = chooseCount(this.program, values, 1e-4);
    if (fraction === undefined) {
      this.late.keep({ ...now, bound: Math.max(now.bound, bound) });
      return undefined;
    }
    const [first, second] = halves(this.program, now, { ...fraction, bound });
    this.open.keep(second);
    return first;
  }

  private giveUp(): undefined {
    this.complete = false;
    return undefined;
  }

  private enter(now: Case): CountLimits {
    const { program, problem } = this;
    const { kinds, total } = stockLimits(problem);
    kinds.forEach((limits, k) => {
      setLimits(program, { variable: -1 - (program.kindRow[k] as number), limits });
    });
    setLimits(program, { variable: -1 - program.totalRow, limits: total });
    for (const change of changesOf(now)) setLimits(program, change);
    return countLimitsOf(problem, program);
  }

  /** Solves the case with the columns it knew, whose prices are right; then lets all columns in. */
  private reachBasis(now: Case): boolean {
    const { program, work } = this;
    program.active = now.active;
    if (!beginAt(program, now.start, work)) return false;
    if (solveDual(program, Infinity, work).kind !== 'optimal') return false;
    program.active = Int32Array.from(program.lower, (_, j) => j);
    recomputeValues(program);
    recomputePrices(program);
    return true;
  }

  /** Searches the patterns that a plan within the limits can use, if they are not too many. */
  private searchListed(
    { prices, bound, limits }: { prices: Prices; bound: number; limits: CountLimits },
    most: number,
  ): boolean {
    const budget = budgetAbove(bound, this.target);
    const columns = listPatterns(this.problem, prices, { budget, onlyFull: true, most }, this.work);
    if (columns === undefined) return false;
    const aim = { limits, target: this.target, floor: this.floor };
    const found = searchColumns(this.problem, columns, aim, this.work);
    this.cases += found.cases;
    this.complete &&= found.complete;
    if (found.uses !== undefined) {
      this.best = found.uses;
      this.bestCost = found.cost;
      this.target = found.cost - 1;
    }
    return true;
  }
}

/**
 * The known columns, an empty board of each kind (so that a least number can always be met) and, at a deterrent
 * price, each piece without a board (so that a most number can).
 */
function poolOf(problem: ReducedProblem, known: Columns): Columns {
  const pool = new Columns();
  const lengths = problem.lengths.length;
  for (let j = 0; j < known.size; j++) {
    pool.add(known.kind[j] as number, known.cost[j] as number, known.counts(j, lengths));
  }
  for (const [k, kind] of problem.kinds.entries()) pool.add(k, kind.cost, []);
  const dearest = Math.max(...problem.kinds.map(kind => kind.cost));
  for (let i = 0; i < lengths; i++) {
    const counts = problem.lengths.map((_, other) => (other === i ? 1 : 0));
    pool.add(problem.kinds.length, 3 * dearest + 1, counts);
  }
  return pool;
}

function isPossible({ kinds, total }: CountLimits): boolean {
  const fewest = kinds.reduce((sum, [least]) => sum + least, 0);
  const most = kinds.reduce((sum, [, greatest]) => sum + greatest, 0);
  return fewest <= total[1] && most >= total[0];
}
