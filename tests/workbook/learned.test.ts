import { describe, expect, test } from 'vitest';
import type { Plan } from '../../src/plan/plan.js';
import type { Event } from '../../src/workbook/events.js';
import { helperCame, type Learned, learnedIn } from '../../src/workbook/learned.js';
import { progressOf } from '../../src/workbook/progress.js';
import type { Workbook } from '../../src/workbook/workbook.js';
import { build, HOUR, step, TUESDAY_14 } from '../support/journal.js';
import { smallPlan } from '../support/small-plan.js';

const PLAN: Plan = {
  ...smallPlan(),
  steps: [
    step('cut', { who: 'both' }),
    step('sand', { who: 'helper' }),
    step('saw', { who: 'lead' }),
  ],
};
const EVENTS: readonly Event[] = [
  { kind: 'build-started', atMs: TUESDAY_14 },
  { kind: 'tools-briefed', atMs: TUESDAY_14 + HOUR, tools: ['tape', 'chisel'] },
  { kind: 'step-done', atMs: TUESDAY_14 + 2 * HOUR, step: 'cut' },
  { kind: 'step-done', atMs: TUESDAY_14 + 3 * HOUR, step: 'sand' },
  { kind: 'step-done', atMs: TUESDAY_14 + 4 * HOUR, step: 'saw' },
];

function learnedFrom(workbook: Workbook, plan: Plan = PLAN) {
  return learnedIn({ workbook, plan, progress: progressOf(workbook.events) });
}

function learned(events: readonly Event[], about = {}) {
  return learnedFrom(build(events, about));
}

const past = (about: Partial<Learned>): Learned => ({
  build: 'bench 1',
  tools: [],
  alone: 0,
  together: 0,
  sinceMs: 0,
  lastAtMs: TUESDAY_14,
  ...about,
});

describe('what a helper learned in a build', () => {
  test('tools that were signed off, and steps done alone and together; not those of the lead', () => {
    expect(learned(EVENTS)).toEqual({
      build: `planter-bench ${TUESDAY_14}`,
      tools: [
        { tool: 'tape', atMs: TUESDAY_14 + HOUR },
        { tool: 'chisel', atMs: TUESDAY_14 + HOUR },
      ],
      alone: 1,
      together: 1,
      sinceMs: 0,
      lastAtMs: TUESDAY_14 + 3 * HOUR,
    });
  });

  test('what was taken back was not learned', () => {
    const back: Event = { kind: 'taken-back', atMs: TUESDAY_14 + 5 * HOUR };
    expect(learned([...EVENTS.slice(0, 2), back])).toBe(undefined);
  });

  test('another helper begins anew', () => {
    const changed: Event = { kind: 'helper-changed', atMs: TUESDAY_14 + 5 * HOUR };
    const sanded: Event = { kind: 'step-done', atMs: TUESDAY_14 + 6 * HOUR, step: 'cut' };
    expect(learned([...EVENTS, changed, sanded])).toMatchObject({
      tools: [],
      alone: 0,
      together: 1,
      sinceMs: TUESDAY_14 + 5 * HOUR,
    });
  });

  test('the example teaches nobody, and who builds alone has no helper', () => {
    expect(learned(EVENTS, { example: true })).toBe(undefined);
    const alone: Plan = { ...PLAN, time: { ...PLAN.time, people: 1 } };
    expect(learnedFrom(build(EVENTS), alone)).toBe(undefined);
  });

  test('no name is kept, neither of a build nor of a person', () => {
    expect(
      JSON.stringify(learned(EVENTS, { name: "Grandma's bench", id: 'grandmas-bench' })),
    ).not.toMatch(/grandma/i);
  });
});

describe('what a helper brings along', () => {
  test('the newest sign-off of each tool, and all steps', () => {
    const came = helperCame(
      [
        past({ tools: [{ tool: 'chisel', atMs: 5 }], alone: 2, together: 3 }),
        past({ build: 'bench 2', tools: [{ tool: 'chisel', atMs: 9 }], together: 4 }),
      ],
      TUESDAY_14,
    );
    expect(came).toEqual({
      kind: 'helper-came',
      atMs: TUESDAY_14,
      tools: [{ tool: 'chisel', atMs: 9 }],
      alone: 2,
      together: 7,
    });
  });

  test('nothing of a helper who was there before the one of now', () => {
    const before = past({ tools: [{ tool: 'chisel', atMs: 5 }], alone: 2, lastAtMs: 6 });
    const now = past({ build: 'bench 2', sinceMs: 7, lastAtMs: 8, together: 1 });
    expect(helperCame([before, now], TUESDAY_14)).toMatchObject({
      tools: [],
      alone: 0,
      together: 1,
    });
  });

  test('nothing is known: nothing is said', () => {
    expect(helperCame([], TUESDAY_14)).toBe(undefined);
  });
});
