import { createRequire } from 'node:module';
import fc from 'fast-check';
import type { LegacyHighs } from 'highs';
import { describe, expect, test } from 'vitest';
import { planSchedule } from '../../../src/solve/schedule/plan-schedule.js';
import type { ScheduleProblem } from '../../../src/solve/schedule/problem.js';
import { smallProblem } from './small-problems.js';
import { lpText } from './whole-model.js';

// The package describes its types for `require` only.
const load: () => Promise<LegacyHighs> = createRequire(import.meta.url)('highs');
const highs = await load();

function endByHighs(problem: ScheduleProblem, last: number): number {
  const options = { presolve: 'off', mip_rel_gap: 0, time_limit: 60 } as const;
  const { Status, ObjectiveValue } = highs.solve(lpText(problem, last), options);
  expect(Status).toBe('Optimal');
  return Math.round(ObjectiveValue);
}

// HiGHS (Q. Huangfu and J.A.J. Hall, Parallelizing the dual revised simplex method, Mathematical Programming
// Computation 10, 2018) with presolve off, on the time-indexed form of A.A.B. Pritsker, L.J. Watters and P.M. Wolfe
// (Management Science 16, 1969). Only the earliest end is compared.
describe('a general solver for whole-number programs on the same work', () => {
  test.each([11, 12, 13, 14, 15, 16])('small random work comes to the same end (%i)', seed => {
    const problems = fc.sample(smallProblem, { numRuns: 5, seed });
    for (const problem of problems) {
      const found = planSchedule(problem);
      const last = problem.sessions.at(-1)?.to ?? 0;
      if (found.ok) expect(found.schedule.finish).toBe(endByHighs(problem, last));
    }
  });

  test('two people in four short evenings with a wait overnight', () => {
    const evening = (day: number) => ({
      from: day * 48,
      to: day * 48 + 8,
      quietFrom: day * 48 + 5,
    });
    const lead = { all: [0] };
    const helper = { all: [1] };
    const both = { all: [0, 1] };
    const row = (id: string, minutes: number, needs: typeof lead, loud = false) => ({
      id,
      minutes,
      needs,
      loud,
      from: 0,
    });
    const problem: ScheduleProblem = {
      people: 2,
      tasks: [
        row('saw', 4, both, true),
        row('saw short ones', 2, lead, true),
        row('notch', 3, lead, true),
        row('sand', 4, helper),
        row('glue', 3, both),
        row('screw', 4, both),
        row('sand edges', 2, helper),
        row('seal', 3, both),
        row('set in place', 2, both),
      ],
      waits: [
        { first: 'saw', then: 'saw short ones', minutes: 0 },
        { first: 'saw', then: 'notch', minutes: 0 },
        { first: 'saw', then: 'sand', minutes: 0 },
        { first: 'notch', then: 'glue', minutes: 0 },
        { first: 'glue', then: 'screw', minutes: 6 },
        { first: 'screw', then: 'seal', minutes: 0 },
        { first: 'sand', then: 'seal', minutes: 0 },
        { first: 'sand edges', then: 'seal', minutes: 0 },
        { first: 'seal', then: 'set in place', minutes: 40 },
      ],
      sessions: [0, 1, 2, 3].map(evening),
    };
    const found = planSchedule(problem);
    if (!found.ok) throw new Error('there is no schedule');
    expect(found.schedule.proof.kind).not.toBe('none');
    expect(found.schedule.finish).toBe(endByHighs(problem, 152));
  });
});
