import type { Work } from '../work.js';
import { assemble } from './assemble.js';
import type { WishOrder } from './exchange.js';
import { type Cheapest, findCheapest } from './find-cheapest.js';
import { costOf } from './greedy.js';
import { keepBoards } from './keep-boards.js';
import { normalize, type ReducedProblem } from './normalize.js';
import type { CutBoard, CuttingPlan, CuttingProblem } from './problem.js';
import { grantWishes } from './second-wishes.js';

/** Steps that an effort of 1 allows: about one second on one core at full speed. */
const stepsForEffort = 200_000_000;

/** Part of the effort for planning what remains beside boards that are kept; it is planned several times. */
const effortForRest = 0.1;

/**
 * `effort`: 1 is the usual work limit. `keep`: boards of an earlier plan that had best stay as they were (a plan after
 * a spoiled piece: those not cut yet). `first`: which of the two last wishes counts more.
 */
export type PlanOptions = {
  readonly effort?: number;
  readonly keep?: readonly CutBoard[];
  readonly first?: WishOrder;
};

/**
 * Finds which boards to take and how to cut them at the least cost; at that cost with few boards, few stop settings
 * and one long offcut. Lengths in whole units, costs in cents. Effort 0 still gives a plan.
 * At the same cost, boards to keep stay as they were as far as that is found possible. Throws a RangeError on numbers that are not whole or ids used twice, which the caller has to rule out.
 * Three 1000 mm pieces with a 3 mm blade need 3006 mm, so from 3000 mm boards two are taken.
 */
export function planCutting(problem: CuttingProblem, options: PlanOptions = {}): CuttingPlan {
  const { effort = 1, keep = [], first = 'settings' } = options;
  const plan = planAfresh(problem, effort, first);
  if (keep.length === 0) return plan;
  const solve = (rest: CuttingProblem) => planAfresh(rest, effort * effortForRest, first);
  return keepBoards(problem, plan, keep, solve);
}

function planAfresh(problem: CuttingProblem, effort: number, first: WishOrder): CuttingPlan {
  const work: Work = { done: 0, limit: stepsForEffort * effort };
  const reduced = normalize(problem);
  const cheapest = findCheapest(reduced, work);
  const uses = grantWishes(reduced, cheapest.relaxation, { uses: cheapest.uses, first }, work);
  return {
    ...moneyOf(reduced, cheapest),
    ...assemble(problem, reduced, uses),
    work: Math.round(work.done),
    duals: dualsOf(reduced, cheapest),
  };
}

/** Cost, bound and proof in real money: the deterrent price of missing pieces is taken out again. */
function moneyOf(
  problem: ReducedProblem,
  { uses, cost, lowerBound, cases }: Cheapest,
): Pick<CuttingPlan, 'cost' | 'lowerBound' | 'proof'> {
  const absent = uses.filter(({ pattern }) => problem.kinds[pattern.kind]?.single);
  const real = cost - costOf(problem, absent);
  if (lowerBound < cost) {
    const gap = Math.min(real, cost - lowerBound);
    return { cost: real, lowerBound: real - gap, proof: { kind: 'none', gap } };
  }
  const proof = cases === 0 ? ({ kind: 'bound' } as const) : ({ kind: 'search', cases } as const);
  return { cost: real, lowerBound: real, proof };
}

function dualsOf({ pieces }: ReducedProblem, { relaxation }: Cheapest): Map<string, number> {
  const { worth } = relaxation.prices;
  return new Map(pieces.flatMap((alike, i) => alike.map(({ id }) => [id, worth[i] ?? 0])));
}
