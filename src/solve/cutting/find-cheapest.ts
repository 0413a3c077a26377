import { partsPerCent } from './bound.js';
import { type Relaxation, relax } from './column-generation.js';
import { nextCost, stockLimits } from './count-limits.js';
import { dive } from './dive.js';
import { costOf, fillGreedily, wholeProblem } from './greedy.js';
import { climb, type LadderEnd } from './ladder.js';
import type { ReducedProblem } from './normalize.js';
import type { Work } from './work.js';

/** A plan, how far it is proven, and the relaxation whose prices the proof begins with. */
export type Cheapest = LadderEnd & { readonly relaxation: Relaxation };

/**
 * Fills boards longest first, solves the relaxed problem, follows it down to a plan, and searches whatever lies
 * between that plan and the bound. There is always a plan, however early the work limit comes.
 */
export function findCheapest(problem: ReducedProblem, work: Work): Cheapest {
  const first = fillGreedily(problem, wholeProblem(problem));
  const relaxation = relax(problem, first, work);
  const least = nextCost(problem, stockLimits(problem), Math.ceil(relaxation.bound / partsPerCent));
  const uses = dive(problem, relaxation, { known: first, floor: least }, work);
  const cost = costOf(problem, uses);
  const begin = { uses, cost, lowerBound: Math.min(cost, least), cases: 0 };
  return { ...climb(problem, relaxation, begin, work), relaxation };
}
