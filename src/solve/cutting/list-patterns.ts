import type { Work } from '../work.js';
import { isSpent, spend } from '../work.js';
import type { Prices } from './bound.js';
import { allowance, partsPerCent } from './bound.js';
import { Columns } from './columns.js';
import type { ReducedProblem } from './normalize.js';
import { SuffixWorth } from './suffix-worth.js';

/** Which patterns are wanted: waste of worth up to `budget` parts of a cent; only full boards, or all of them. */
export type Wanted = { readonly budget: number; readonly onlyFull: boolean; readonly most: number };

/**
 * Lists every pattern a plan can contain that costs no more than the bound plus `budget`: those whose pieces are
 * worth at least price and rent less the budget. All in whole numbers. A full board is one that no wanted
 * piece fits any more; full boards are enough when only cost counts. Undefined when there are more than `most`
 * or the work limit is reached: a list cut short proves nothing.
 */
export function listPatterns(
  problem: ReducedProblem,
  prices: Prices,
  wanted: Wanted,
  work: Work,
): Columns | undefined {
  const columns = new Columns();
  const widest = Math.max(0, ...problem.kinds.map(kind => kind.room));
  const goods = { lengths: problem.lengths, demands: problem.demands, worth: prices.worth };
  const suffix = new SuffixWorth(goods, widest, work);
  for (const [k, kind] of problem.kinds.entries()) {
    if (kind.single) {
      const least = allowance(problem, prices, k) - wanted.budget;
      listSingles(problem, prices, { kind: k, least }, columns);
    } else {
      const lister = new Lister(problem, k, { prices, wanted, suffix, columns }, work);
      lister.descend(0, kind.room, 0, Infinity);
    }
    if (columns.size > wanted.most || isSpent(work)) return undefined;
  }
  return columns;
}

/** Lists the patterns of one kind of board, one length after the other, the most of each first. */
class Lister {
  private readonly counts: number[];
  private readonly least: number;

  constructor(
    private readonly problem: ReducedProblem,
    private readonly kind: number,
    private readonly given: {
      readonly prices: Prices;
      readonly wanted: Wanted;
      readonly suffix: SuffixWorth;
      readonly columns: Columns;
    },
    private readonly work: Work,
  ) {
    this.counts = problem.lengths.map(() => 0);
    // Parts of a cent the pieces have to be worth.
    this.least = allowance(problem, given.prices, kind) - given.wanted.budget;
  }

  /** Every way to go on from length i with so much room left, pieces worth so much, and the shortest piece left out. */
  descend(i: number, room: number, worth: number, skipped: number): void {
    const { problem, given, counts, work } = this;
    if (given.columns.size > given.wanted.most || isSpent(work)) return;
    spend(work, 3);
    if (worth + given.suffix.most(i, room) < this.least) return;
    if (i === problem.lengths.length) {
      if (!given.wanted.onlyFull || room < skipped) this.keep();
      return;
    }
    const length = problem.lengths[i] as number;
    const demand = problem.demands[i] as number;
    const each = given.prices.worth[i] as number;
    for (let count = Math.min(demand, Math.floor(room / length)); count >= 0; count--) {
      counts[i] = count;
      const left = room - count * length;
      this.descend(i + 1, left, worth + count * each, count < demand ? length : skipped);
    }
    counts[i] = 0;
  }

  private keep(): void {
    const { problem, given, counts, kind } = this;
    if (counts.every(count => count === 0)) return;
    given.columns.add(kind, problem.kinds[kind]?.cost ?? 0, counts);
  }
}

function listSingles(
  problem: ReducedProblem,
  prices: Prices,
  { kind, least }: { kind: number; least: number },
  columns: Columns,
): void {
  const cost = problem.kinds[kind]?.cost ?? 0;
  for (const [i, worth] of prices.worth.entries()) {
    const counts = problem.lengths.map((_, other) => (other === i ? 1 : 0));
    if (worth >= least) columns.add(kind, cost, counts);
  }
}

/** Parts of a cent that `cents` leaves above a bound in parts. */
export function budgetAbove(bound: number, cents: number): number {
  return cents * partsPerCent - bound;
}
