import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import { everyWay } from './every-way.js';
import { smallProblem } from './small-problems.js';

describe('small problems against every way to cut them', () => {
  it('misses no piece that could be cut, pays no cent too much, and proves it', () => {
    fc.assert(
      fc.property(smallProblem, problem => {
        const plan = planCutting(problem);
        expect(checkPlan(problem, plan)).toEqual([]);
        expect(plan.proof.kind).not.toBe('none');
        const missing = plan.missing.reduce((sum, one) => sum + one.count, 0);
        expect({ missing, cost: plan.cost }).toEqual(everyWay(problem));
      }),
      { numRuns: 1500, seed: 1 },
    );
  });
});
