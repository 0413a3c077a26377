import { assemble } from './assemble.js';
import { costOf, fillGreedily, wholeProblem } from './greedy.js';
import { normalize } from './normalize.js';
import type { CuttingPlan, CuttingProblem } from './problem.js';

/**
 * Finds which boards to take and how to cut them at the least cost. Lengths in whole units, costs in cents.
 * Throws a RangeError on numbers that are not whole. Three 1000 mm pieces with a 3 mm blade need 3006 mm, so
 * from 3000 mm boards two are taken.
 */
export function planCutting(
  problem: CuttingProblem,
  options: { effort?: number } = {},
): CuttingPlan {
  void options;
  const reduced = normalize(problem);
  const uses = fillGreedily(reduced, wholeProblem(reduced));
  const { boards, missing } = assemble(problem, reduced, uses);
  const real = uses.filter(({ pattern }) => !reduced.kinds[pattern.kind]?.single);
  const cost = costOf(reduced, real);
  return {
    cost,
    lowerBound: 0,
    proof: { kind: 'none', gap: cost },
    boards,
    missing,
    work: 0,
    duals: new Map(),
  };
}
