import { checkPlan } from '../solve/cutting/check-plan.js';
import { planCutting } from '../solve/cutting/plan-cutting.js';
import type { CuttingPlan, CuttingProblem, Stock } from '../solve/cutting/problem.js';

/** Boards to rip by stock id, and how the strips out of them are cut to length. */
export type RippedBoards = {
  readonly boards: ReadonlyMap<string, number>;
  readonly cost: number;
  /** No way of ripping these boards can cost less. */
  readonly lowerBound: number;
  /** Strips as stock at no cost, as many as come out of the boards. */
  readonly problem: CuttingProblem;
  readonly plan: CuttingPlan;
};

/** A fifth of a second's search for each try is plenty for strips. */
const EFFORT = 0.2;

/**
 * The boards to rip for these pieces when each board gives so many strips; undefined when pieces have no
 * strip, or when even the best could cost no less than `below` cents. First strips are taken at their share of
 * a board's price, which bounds the cost; then whole boards are counted, and given up or changed for cheaper
 * ones as long as the pieces still fit. Five strips at two out of a board are three boards.
 */
export function rippedBoards(
  problem: CuttingProblem,
  strips: number,
  below: number,
): RippedBoards | undefined {
  const shared = planCutting(problem, { effort: EFFORT });
  if (shared.missing.length > 0) return undefined;
  const least = Math.ceil(shared.lowerBound / strips);
  if (least >= below) return undefined;
  const used = (id: string) => shared.boards.filter(({ stock }) => stock === id).length;
  const forSale = problem.stock.filter(({ available }) => available === undefined);
  const lowerBound = nextSum(least, forSale);
  const first = new Map(forSale.map(({ id }) => [id, Math.ceil(used(id) / strips)]));
  const boards = cheapened(first, { problem, strips, forSale, lowerBound });
  const cost = costOf(boards, forSale);
  if (cost >= below) return undefined;
  const strip = stripProblem(problem, boards, strips);
  const plan = planCutting(strip);
  const wrong = checkPlan(strip, plan);
  if (wrong.length > 0 || plan.missing.length > 0)
    throw new Error(`strips do not add up: ${wrong.join('; ')}`);
  return { boards, cost, lowerBound, problem: strip, plan };
}

type Counts = ReadonlyMap<string, number>;

type Ground = {
  readonly problem: CuttingProblem;
  readonly strips: number;
  readonly forSale: readonly Stock[];
  readonly lowerBound: number;
};

/** The least that any number of boards can cost and is not below this: at 4.48 and 5.98, 3.49 becomes 4.48. */
function nextSum(least: number, forSale: readonly Stock[]): number {
  const sums = new Set([0]);
  for (let sum = 0; ; sum++) {
    const reached = sum === 0 || forSale.some(({ cost }) => cost > 0 && sums.has(sum - cost));
    if (!reached) continue;
    if (sum >= least) return sum;
    sums.add(sum);
  }
}

/** One board fewer, or one changed for a cheaper one, the best change first, until none fits any more. */
function cheapened(counts: Counts, ground: Ground): Counts {
  const { problem, strips, forSale, lowerBound } = ground;
  const now = costOf(counts, forSale);
  if (now <= lowerBound) return counts;
  const best = changes(counts, forSale)
    .map(changed => ({ changed, cost: costOf(changed, forSale) }))
    .filter(({ cost }) => cost < now)
    .sort((a, b) => a.cost - b.cost)
    .find(({ changed }) => fits(stripProblem(problem, changed, strips)));
  return best === undefined ? counts : cheapened(best.changed, ground);
}

function changes(counts: Counts, forSale: readonly Stock[]): readonly Counts[] {
  return forSale.flatMap(from => {
    const count = counts.get(from.id) ?? 0;
    if (count === 0) return [];
    const fewer = new Map(counts).set(from.id, count - 1);
    const swapped = forSale
      .filter(({ id }) => id !== from.id)
      .map(({ id }) => new Map(fewer).set(id, (counts.get(id) ?? 0) + 1));
    return [fewer, ...swapped];
  });
}

function fits(problem: CuttingProblem): boolean {
  return planCutting(problem, { effort: EFFORT }).missing.length === 0;
}

function stripProblem(problem: CuttingProblem, boards: Counts, strips: number): CuttingProblem {
  const stock = problem.stock.map(one =>
    one.available === undefined
      ? { ...one, cost: 0, available: strips * (boards.get(one.id) ?? 0) }
      : one,
  );
  return { ...problem, stock };
}

function costOf(boards: Counts, forSale: readonly Stock[]): number {
  return forSale.reduce((sum, { id, cost }) => sum + cost * (boards.get(id) ?? 0), 0);
}
