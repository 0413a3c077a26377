import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkSchedule } from '../../../src/solve/schedule/check-schedule.js';
import { planSchedule } from '../../../src/solve/schedule/plan-schedule.js';
import { earliestEnd } from './every-order.js';
import { smallProblem } from './small-problems.js';

describe('against every order, tried one by one', () => {
  test('the same earliest end, and a schedule that holds', () => {
    fc.assert(
      fc.property(smallProblem, problem => {
        const found = planSchedule(problem);
        expect(found.ok ? found.schedule.finish : undefined).toBe(earliestEnd(problem));
        if (!found.ok) return;
        expect(checkSchedule(problem, found.schedule)).toEqual([]);
        expect(found.schedule.proof.kind).not.toBe('none');
      }),
      { numRuns: 400, seed: 20261129 },
    );
  });

  test('no smaller choice of sessions has the same end', () => {
    fc.assert(
      fc.property(smallProblem, problem => {
        const found = planSchedule(problem);
        if (!found.ok || !found.schedule.fewestProven) return;
        const { finish, sessions } = found.schedule;
        for (const few of choices(problem.sessions, sessions - 1)) {
          const end = earliestEnd({ ...problem, sessions: few });
          expect(end === undefined || end > finish).toBe(true);
        }
      }),
      { numRuns: 120, seed: 20261130 },
    );
  });

  test('the same problem gives the same schedule, and a short limit an honest one', () => {
    fc.assert(
      fc.property(smallProblem, fc.integer({ min: 1, max: 60 }), (problem, limit) => {
        expect(planSchedule(problem)).toEqual(planSchedule(problem));
        const short = planSchedule(problem, limit);
        const whole = planSchedule(problem);
        if (!short.ok || !whole.ok) return;
        expect(checkSchedule(problem, short.schedule)).toEqual([]);
        expect(short.schedule.lowerBound).toBeLessThanOrEqual(whole.schedule.finish);
        expect(short.schedule.finish).toBeGreaterThanOrEqual(whole.schedule.finish);
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});

function choices<T>(of: readonly T[], size: number): readonly (readonly T[])[] {
  if (size <= 0) return [[]];
  return of.flatMap((first, at) =>
    choices(of.slice(at + 1), size - 1).map(rest => [first, ...rest]),
  );
}
