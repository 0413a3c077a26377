import { isSpent, type Work } from '../work.js';
import { partsPerCent } from './bound.js';
import { chooseCount } from './branching.js';
import { type Case, halves, OpenCases } from './cases.js';
import type { Columns } from './columns.js';
import { firstCase, newCountProgram, solveCase } from './count-program.js';
import { columnValues, type LinearProgram } from './linear-program.js';
import type { ReducedProblem } from './normalize.js';
import type { SearchResult } from './search-columns.js';
import { searchListed } from './search-listed.js';

/** The most patterns that are searched at once when no number of boards is left to settle. */
const mostPatterns = 50_000;

/** Plans of at most `target` cents; nothing can beat `floor`; so `few` patterns are searched at once. */
export type CountAim = { readonly target: number; readonly floor: number; readonly few: number };

/**
 * Searches by settling numbers of boards first, making patterns as needed for every such case, until the patterns
 * that a case leaves possible are few enough to be listed and searched. For problems whose patterns are too many to
 * list at once.
 */
export function searchCounts(
  problem: ReducedProblem,
  known: Columns,
  aim: CountAim,
  work: Work,
): SearchResult {
  const search = new CountSearch(problem, newCountProgram(problem, known), aim, work);
  search.run();
  return search.result;
}

class CountSearch {
  result: SearchResult = { uses: undefined, cost: Infinity, complete: true, cases: 0 };
  private readonly open = new OpenCases();
  private readonly late = new OpenCases();
  private target: number;

  constructor(
    private readonly problem: ReducedProblem,
    private readonly program: LinearProgram,
    private readonly aim: CountAim,
    private readonly work: Work,
  ) {
    this.target = aim.target;
  }

  run(): void {
    let next: Case | undefined = firstCase(this.program);
    while (next !== undefined && this.result.cost > this.aim.floor) {
      if (isSpent(this.work)) {
        this.giveUp();
        return;
      }
      next = this.look(next, this.aim.few) ?? this.open.take();
    }
    // Cases put off for their many patterns: the plans found since may have settled them.
    for (let late = this.late.take(); late !== undefined; late = this.late.take()) {
      if (isSpent(this.work)) this.giveUp();
      else if (this.result.cost > this.aim.floor) this.look(late, mostPatterns);
    }
  }

  private look(now: Case, most: number): Case | undefined {
    const { problem, program, work, target } = this;
    if (now.bound > target * partsPerCent) return undefined;
    this.result = { ...this.result, cases: this.result.cases + 1 };
    const end = solveCase(problem, program, { now, target }, work);
    if (end === 'ruled-out') return undefined;
    if (end === 'undecided') return this.giveUp();
    const { limits, prices, bound } = end;
    const aim = { limits, target, floor: this.aim.floor };
    const found = searchListed(problem, { prices, bound, most }, aim, work);
    if (found !== undefined) return this.take(found);
    if (most === mostPatterns) return this.giveUp();
    const fraction = chooseCount(program, columnValues(program), 1e-4);
    if (fraction === undefined) {
      this.late.keep({ ...now, bound: Math.max(now.bound, bound) });
      return undefined;
    }
    const [first, second] = halves(program, now, { ...fraction, bound });
    this.open.keep(second);
    return first;
  }

  private giveUp(): undefined {
    this.result = { ...this.result, complete: false };
    return undefined;
  }

  private take(found: SearchResult): undefined {
    const { uses, cost } = found.uses === undefined ? this.result : found;
    const complete = this.result.complete && found.complete;
    this.result = { uses, cost, complete, cases: this.result.cases + found.cases };
    if (found.uses !== undefined) this.target = found.cost - 1;
    return undefined;
  }
}
