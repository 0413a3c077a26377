import { planCutting } from '../cutting/plan-cutting.js';
import type { CutBoard, CuttingPlan, CuttingProblem, Stock } from '../cutting/problem.js';

/** What somebody would pay a little more for. */
export type Wish = 'boards' | 'settings' | 'offcut';

export type Spending = {
  readonly wish: Wish;
  /** Cents above the cheapest plan, at most. */
  readonly most: number;
  /** As for planning; each try gets a small part of it. */
  readonly effort: number;
};

const effortForTry = 0.02;
/** More pairs of lengths than a store has. */
const mostTries = 60;

/**
 * A plan that has more of a wish than the cheapest one and costs at most so much more; undefined where none was
 * found. Tries fewer lengths of the store, one or two at a time, and longer boards in place of those of the plan. The
 * best found, not the best possible. A pair of 46 in from 8 ft at 7.48 leaves 3-1/2 in; from 10 ft at 9.98, 2.50 more,
 * it leaves 27-1/2 in.
 */
export function spendMore(
  problem: CuttingProblem,
  cheapest: CuttingPlan,
  { wish, most, effort }: Spending,
): CuttingPlan | undefined {
  const first = wish === 'offcut' ? 'offcut' : 'settings';
  const fewer = fewerLengths(problem).map(stock =>
    planCutting({ ...problem, stock }, { effort: effort * effortForTry, first }),
  );
  const found = [...fewer, ...longerBoards(problem, cheapest)]
    .filter(({ missing, cost }) => missing.length === 0 && cost <= cheapest.cost + most)
    .map(plan => ({ plan, amount: amountOf(wish, problem, plan) }));
  const before = amountOf(wish, problem, cheapest);
  const [best] = found
    .filter(({ amount }) => amount > before)
    .sort((a, b) => b.amount - a.amount || a.plan.cost - b.plan.cost);
  if (best === undefined) return undefined;
  const { lowerBound, duals } = cheapest;
  const proof = { kind: 'none', gap: best.plan.cost - lowerBound } as const;
  return { ...best.plan, lowerBound, proof, duals };
}

/** How much of a wish a plan has: the more the better, so what is to be few is below zero. */
export function amountOf(wish: Wish, problem: CuttingProblem, { boards }: CuttingPlan): number {
  switch (wish) {
    case 'boards':
      return -boards.filter(({ stock }) => isForSale(stockOf(problem, stock))).length;
    case 'settings':
      return -setsOfTheStop(problem, boards);
    case 'offcut':
      return Math.max(0, ...boards.map(({ offcut }) => offcut));
  }
}

/**
 * How often the stop is set where equal boards are cut in a row: each length once for each such row. Boards of another
 * length of the store are another row, even with the same pieces.
 */
function setsOfTheStop({ pieces }: CuttingProblem, boards: readonly CutBoard[]): number {
  const lengthOf = new Map(pieces.map(({ id, length }) => [id, length]));
  const rows = new Map(
    boards.map(({ stock, cuts }) => {
      const lengths = cuts.map(id => lengthOf.get(id) ?? 0);
      return [`${stock} ${lengths.join()}`, new Set(lengths).size];
    }),
  );
  return [...rows.values()].reduce((sum, settings) => sum + settings, 0);
}

/** What is on hand, with one or two of the lengths that are for sale. */
function fewerLengths({ stock }: CuttingProblem): readonly (readonly Stock[])[] {
  const own = stock.filter(one => !isForSale(one));
  const sold = stock.filter(isForSale);
  const pairs = sold.flatMap((one, at) => [
    [...own, one],
    ...sold.slice(at + 1).map(other => [...own, one, other]),
  ]);
  return pairs.slice(0, mostTries);
}

/** The plan with one of its boards taken longer: all that is more of it is left over. */
function longerBoards(problem: CuttingProblem, plan: CuttingPlan): readonly CuttingPlan[] {
  const lengthOf = new Map(problem.pieces.map(({ id, length }) => [id, length]));
  return plan.boards.flatMap((board, at) => {
    const from = stockOf(problem, board.stock);
    if (!isForSale(from)) return [];
    const longer = problem.stock.filter(
      it => isForSale(it) && roomIn(it) > roomIn(from) && isLeft(it, plan),
    );
    return longer.map(to => {
      // Where the last piece ended flush no blade was lost behind it; here one is.
      const used = board.cuts.reduce((sum, id) => sum + (lengthOf.get(id) ?? 0) + problem.kerf, 0);
      const offcut = Math.max(0, roomIn(to) - used);
      const boards = plan.boards.with(at, { ...board, stock: to.id, offcut });
      return { ...plan, boards, cost: plan.cost + to.cost - from.cost };
    });
  });
}

function isLeft({ id, available }: Stock, { boards }: CuttingPlan): boolean {
  return available === undefined || boards.filter(({ stock }) => stock === id).length < available;
}

function roomIn({ length, trimStart, trimEnd }: Stock): number {
  return length - trimStart - trimEnd;
}

function isForSale({ cost }: Stock): boolean {
  return cost > 0;
}

function stockOf({ stock }: CuttingProblem, id: string): Stock {
  const found = stock.find(one => one.id === id);
  if (found === undefined) throw new Error(`no board ${id}`);
  return found;
}
