import { describe, expect, test } from 'vitest';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  MINUTE_MS,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';

const PLAN = benchPlan();

/** At the timers of the planter panels, eight glue-ups of four joints, with so many joints counted. */
function atClamps(joints: number) {
  const counted: Event = {
    kind: 'piece-done',
    atMs: TUESDAY_MS,
    step: 'box-corners',
    count: joints,
  };
  const visited: Event = { kind: 'step-visited', atMs: TUESDAY_MS, step: 'box-corners' };
  const events = joints === 0 ? [visited] : [visited, counted];
  const context = contextWith(buildAfter(events, PLAN));
  return usedWith(stepScreen, context).wait(MINUTE_MS).press('t');
}

type Used = ReturnType<typeof atClamps>;

function started({ asks }: Used): number {
  return asks.filter(
    ask => ask.kind === 'record' && ask.events.some(({ kind }) => kind === 'timer-started'),
  ).length;
}

function shown({ state, at }: Used): string {
  return viewLines(stepScreen, state, at).join(' ').replace(/\s+/g, ' ');
}

describe('clamps are timed from the last joint of their glue-up', () => {
  test('with two of four joints counted it asks first, and the same key starts it anyway', () => {
    const used = atClamps(2).press('2');
    expect(started(used)).toBe(0);
    expect(shown(used)).toContain('2 joints of this glue-up are not counted yet. Press 2 again');
    expect(started(used.press('2'))).toBe(1);
  });

  test('by the big key too, as often as it is pressed', () => {
    const used = atClamps(2).press('space').press('space');
    expect(started(used)).toBe(0);
    expect(shown(used)).toContain('2 joints of this glue-up');
  });

  test.each([4, 8, 28])('after %i joints a panel is closed: nothing to ask', joints => {
    expect(started(atClamps(joints).press('2'))).toBe(1);
  });

  test('one joint short it is told as one', () => {
    expect(shown(atClamps(31).press('2'))).toContain('1 joint of this glue-up is not counted yet');
  });
});
