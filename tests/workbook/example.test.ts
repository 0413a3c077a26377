import { describe, expect, test } from 'vitest';
import { exampleEvents } from '../../src/workbook/example.js';
import { currentStep, tallyOf } from '../../src/workbook/next-step.js';
import { progressOf } from '../../src/workbook/progress.js';
import { remainingMinutes } from '../../src/workbook/timers.js';
import { planOf, project } from '../support/projects.js';

const NOW = 1_795_528_800_000;
const PLAN = planOf(project('planter-bench'), { session_hours: { kind: 'hours', value: 5 } });
const EVENTS = exampleEvents(PLAN, NOW);
const PROGRESS = progressOf(EVENTS);

describe('the example build', () => {
  test('stands in its second session, in the middle of a step', () => {
    const current = currentStep(PLAN.steps, PROGRESS);
    const second = PLAN.time.sessions[1]?.steps ?? [];
    expect(second).toContain(current?.id);
    const tally = current && tallyOf(current, PROGRESS);
    expect(tally?.done).toBeGreaterThan(0);
    expect(tally?.done).toBeLessThan(tally?.count ?? 0);
  });

  // Open time of wood glue, some minutes, by any label: a joint that is brushed has to be closed and clamped.
  test.each([3, 4, 5, 6])(
    'stops beside clamps and never in a glue-up, in evenings of %i h',
    value => {
      const plan = planOf(project('planter-bench'), { session_hours: { kind: 'hours', value } });
      const progress = progressOf(exampleEvents(plan, NOW));
      const current = currentStep(plan.steps, progress);
      expect(current?.timers).toEqual([]);
    },
  );

  test('has clamps on that come off while somebody looks', () => {
    const [timer] = PROGRESS.timers;
    if (timer === undefined) throw new Error('no timer runs');
    expect(timer.name).toMatch(/^Clamps/);
    expect(remainingMinutes(timer, NOW)).toBeCloseTo(12);
  });

  test('has nothing in its journal that has not happened yet, and in order', () => {
    const times = EVENTS.map(event => event.atMs);
    expect(times).toEqual([...times].sort((a, b) => a - b));
    expect(Math.max(...times)).toBeLessThanOrEqual(NOW);
  });

  test('was briefed for what it has done and for the step it is at', () => {
    const current = currentStep(PLAN.steps, PROGRESS);
    const done = PLAN.steps.filter(step => PROGRESS.done.has(step.id));
    const needed = [...done, ...(current ? [current] : [])].flatMap(step => step.care);
    expect(needed.filter(caution => !PROGRESS.briefed.has(caution))).toEqual([]);
  });

  test('has no timer that still runs for a quarter of an hour or more', () => {
    const left = PROGRESS.timers.map(timer => remainingMinutes(timer, NOW));
    expect(left.filter(minutes => minutes > 15)).toEqual([]);
  });
});
