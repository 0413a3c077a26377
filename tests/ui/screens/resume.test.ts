import { describe, expect, test } from 'vitest';
import type { Plan } from '../../../src/plan/plan.js';
import { readyParts } from '../../../src/ui/screens/resume/ready-parts.js';
import { recapFacts } from '../../../src/ui/screens/resume/recap-facts.js';
import { resumeScreen } from '../../../src/ui/screens/resume/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import { step } from '../../support/journal.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { smallPlan } from '../../support/small-plan.js';

const LEFT: readonly Event[] = [
  { kind: 'build-started', atMs: TUESDAY_MS },
  { kind: 'step-done', atMs: TUESDAY_MS, step: 'measure' },
];
const PAUSED: Event = { kind: 'paused', atMs: TUESDAY_MS, step: 'cut/2x4@45', note: '' };

function asked(events: readonly Event[], key: string) {
  return usedWith(resumeScreen, contextWith(buildAfter(events))).press(key).asks;
}

describe('coming back', () => {
  test.each(['space', 'enter', 'page-down'])('%s goes on at the step that comes next', key => {
    expect(asked([...LEFT, PAUSED], key)).toEqual([
      { kind: 'record', events: [{ kind: 'resumed', atMs: TUESDAY_MS }] },
      { kind: 'go', to: 'step' },
    ]);
  });

  test('the step is noted where nobody had looked at it yet', () => {
    expect(asked(LEFT, 'space')).toEqual([
      {
        kind: 'record',
        events: [{ kind: 'step-visited', atMs: TUESDAY_MS, step: 'cut/2x4@45' }],
      },
      { kind: 'go', to: 'step' },
    ]);
  });

  test('y asks what the day is like, where the next step hangs on it', () => {
    const glue = { ...smallPlan(), steps: [step('glue', { day: 'glue' })] };
    const keys = (plan: Plan) => {
      const used = usedWith(resumeScreen, contextWith(buildAfter([], plan)));
      return used.press('y').asks;
    };
    expect(keys(glue)).toEqual([{ kind: 'go', to: 'day' }]);
    expect(keys(smallPlan())).toEqual([]);
  });

  test('only looking in records nothing', () => {
    expect(asked([...LEFT, PAUSED], 'escape')).toEqual([{ kind: 'leave' }]);
    expect(asked([...LEFT, PAUSED], 'b')).toEqual([{ kind: 'go', to: 'plan' }]);
  });
});

test('who says "heard" at the recap was last here when the work was left, and as long ago as that', () => {
  const heard: Event = {
    kind: 'timer-silenced',
    atMs: TUESDAY_MS + 5 * 60_000,
    timer: 'ends/clamp',
  };
  const at = { ...contextWith(undefined), nowMs: TUESDAY_MS + 5 * 60_000 };
  const soFar = (events: readonly Event[]) =>
    recapFacts(buildAfter(events), at).find(({ name }) => name === 'So far')?.text;
  expect(soFar([...LEFT, heard])).toContain('last here 14:00, 5 min ago');
  expect(soFar([...LEFT, heard])).toBe(soFar(LEFT));
});

// Counted at the bench: 13 slats on the seat of 48 in, 2 posts and 2 rails in each panel of 4 joints.
describe('what lies ready once everything is cut', () => {
  const plan = benchPlan();
  const cut = plan.steps
    .filter(({ phase }) => phase === 'cut')
    .map(({ id }): Event => ({ kind: 'step-done', atMs: TUESDAY_MS, step: id }));
  const counted = (id: string, count: number): Event => ({
    kind: 'piece-done',
    atMs: TUESDAY_MS,
    step: id,
    count,
  });
  const ready = (events: readonly Event[]) => {
    const parts = readyParts(buildAfter([...cut, ...events], plan));
    return (name: string) =>
      parts.filter(part => part.name === name).reduce((sum, { count }) => sum + count, 0);
  };

  test('a slat that is screwed down lies ready no longer, though others do', () => {
    const slats = ready([])('seat slat');
    expect(slats).toBe(13);
    expect(ready([counted('slats', 5)])('seat slat')).toBe(8);
  });

  test('with one panel of four joints closed its two posts and two rails are used', () => {
    const first = ready([]);
    const then = ready([counted('end-corners', 4)]);
    expect(first('post') - then('post')).toBe(2);
    expect(first('panel rail') - then('panel rail')).toBe(2);
  });

  test('pots stand on their blocks: none lies ready', () => {
    expect(ready([])('pot block')).toBeGreaterThan(0);
    expect(ready([{ kind: 'step-done', atMs: TUESDAY_MS, step: 'pots' }])('pot block')).toBe(0);
  });
});
