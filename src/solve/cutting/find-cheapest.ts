import { partsPerCent } from './bound.js';
import { type Relaxation, relax } from './column-generation.js';
import { nextCost, stockLimits } from './count-limits.js';
import { dive, divesInARow } from './dive.js';
import { costOf, fillGreedily, wholeProblem } from './greedy.js';
import { climb, type LadderEnd } from './ladder.js';
import type { ReducedProblem } from './normalize.js';
import { isSpent, type Work } from './work.js';

/** A plan, how far it is proven, and the relaxation whose prices the proof begins with. */
export type Cheapest = LadderEnd & { readonly relaxation: Relaxation };

/** So many dives at most; those after the first few follow a search that ended without a proof. */
const mostDives = 21 * divesInARow;

/** With boards of several prices and no more lengths than this, searching is quicker than diving. */
const fewLengths = 40;

/**
 * Fills boards longest first, solves the relaxed problem, follows it down to a plan, and searches whatever lies
 * between that plan and the bound. There is always a plan, however early the work limit comes.
 */
export function findCheapest(problem: ReducedProblem, work: Work): Cheapest {
  const first = fillGreedily(problem, wholeProblem(problem));
  const relaxation = relax(problem, first, work);
  const least = nextCost(problem, stockLimits(problem), Math.ceil(relaxation.bound / partsPerCent));
  const isQuick = problem.kinds.length > 1 && problem.lengths.length <= fewLengths;
  let dives = isQuick ? 1 : divesInARow;
  const uses = dive(problem, relaxation, { known: first, floor: least, turns: dives }, work);
  const cost = costOf(problem, uses);
  const begin = { uses, cost, lowerBound: Math.min(cost, least), cases: 0 };
  let end = climb(problem, relaxation, begin, work);
  // What search leaves open, another dive may close.
  for (; dives < mostDives && end.cost > end.lowerBound && !isSpent(work); dives += divesInARow) {
    const aim = { known: end.uses, floor: end.lowerBound, from: dives };
    const again = dive(problem, relaxation, aim, work);
    end = { ...end, uses: again, cost: costOf(problem, again) };
  }
  // A plan at the first bound needs no search to be proven, however it was found.
  const cases = end.cost <= least ? 0 : end.cases;
  return { ...end, cases, relaxation };
}
