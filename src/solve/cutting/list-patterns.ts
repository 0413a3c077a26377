import type { Prices } from './bound.js';
import { allowance, partsPerCent } from './bound.js';
import { Columns } from './columns.js';
import type { ReducedProblem } from './normalize.js';
import { SuffixWorth } from './suffix-worth.js';
import type { Work } from './work.js';
import { isSpent, spend } from './work.js';

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
    const least = allowance(problem, prices, k) - wanted.budget;
    const lister = { problem, prices, wanted, work, columns, suffix, kind: k, least };
    const counts = problem.lengths.map(() => 0);
    if (kind.single) listSingles(problem, prices, { kind: k, least }, columns);
    else descend(lister, 0, { room: kind.room, worth: 0, smallestSkipped: Infinity }, counts);
    if (columns.size > wanted.most || isSpent(work)) return undefined;
  }
  return columns;
}

type Lister = {
  readonly problem: ReducedProblem;
  readonly prices: Prices;
  readonly wanted: Wanted;
  readonly work: Work;
  readonly columns: Columns;
  readonly suffix: SuffixWorth;
  readonly kind: number;
  /** Parts of a cent the pieces have to be worth. */
  readonly least: number;
};

type State = { readonly room: number; readonly worth: number; readonly smallestSkipped: number };

function descend(lister: Lister, i: number, state: State, counts: number[]): void {
  const { problem, columns, wanted, work } = lister;
  if (columns.size > wanted.most || isSpent(work)) return;
  spend(work, 3);
  if (state.worth + lister.suffix.most(i, state.room) < lister.least) return;
  if (i === problem.lengths.length) {
    if (!wanted.onlyFull || state.room < state.smallestSkipped) keep(lister, counts);
    return;
  }
  const length = problem.lengths[i] as number;
  const demand = problem.demands[i] as number;
  const worth = lister.prices.worth[i] as number;
  const most = Math.min(demand, Math.floor(state.room / length));
  for (let count = most; count >= 0; count--) {
    counts[i] = count;
    const smallestSkipped = count < demand ? length : state.smallestSkipped;
    const next = {
      room: state.room - count * length,
      worth: state.worth + count * worth,
      smallestSkipped,
    };
    descend(lister, i + 1, next, counts);
  }
  counts[i] = 0;
}

function keep({ columns, kind, problem }: Lister, counts: readonly number[]): void {
  if (counts.some(count => count > 0)) columns.add(kind, problem.kinds[kind]?.cost ?? 0, counts);
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
