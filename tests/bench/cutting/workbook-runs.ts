import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { findCheapest } from '../../../src/solve/cutting/find-cheapest.js';
import { normalize } from '../../../src/solve/cutting/normalize.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import type { CuttingPlan } from '../../../src/solve/cutting/problem.js';
import {
  settingsOf as settingsOfUses,
  withoutExcess,
} from '../../../src/solve/cutting/settings.js';
import { timed } from './cpu-time.js';
import { workbookProblem } from './workbook-set.js';

export const SEEDS = 300;

export type Run = { readonly seed: number; readonly ms: number; readonly plan: CuttingPlan };

/** Solves the made-up problems of start numbers 1 to `seeds` and takes the processor time; a plan that does not add up is an error. */
export function runs(effort: number, seeds = SEEDS): Run[] {
  return Array.from({ length: seeds }, (_, at) => {
    const problem = workbookProblem(at + 1);
    const { ms, result: plan } = timed(() => planCutting(problem, { effort }));
    const faults = checkPlan(problem, plan);
    if (faults.length > 0) throw new Error(`start number ${at + 1}: ${faults.join(' ')}`);
    return { seed: at + 1, ms, plan };
  });
}

/** Stop settings of the plan as the search for the least cost leaves it, and as it is given out, one problem each, from a start number on. */
export function settings(seeds = SEEDS, first = 1): { plain: number; given: number }[] {
  return Array.from({ length: seeds }, (_, at) => {
    const problem = workbookProblem(first + at);
    const reduced = normalize(problem);
    const { uses } = findCheapest(reduced, { done: 0, limit: 200_000_000 });
    return {
      plain: settingsOfUses(withoutExcess(reduced, uses)),
      given: settingsOf(planCutting(problem)),
    };
  });
}

/** One setting for each different piece on each group of boards cut alike. */
function settingsOf({ boards }: CuttingPlan): number {
  const groups = new Map(boards.map(({ cuts }) => [cuts.join(), new Set(cuts).size]));
  return [...groups.values()].reduce((sum, count) => sum + count, 0);
}
