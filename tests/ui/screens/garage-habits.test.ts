import { describe, expect, test } from 'vitest';
import { pauseScreen } from '../../../src/ui/screens/pause/screen.js';
import { resumeScreen } from '../../../src/ui/screens/resume/screen.js';
import { meanwhile } from '../../../src/ui/screens/timers/meanwhile.js';
import type { Event } from '../../../src/workbook/events.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';

const BENCH = benchPlan();
const CUTTING = BENCH.steps.find(
  ({ id, tally }) => id.startsWith('cut-boards/') && (tally?.count ?? 0) > 10,
);
const CUT_ID = CUTTING?.id ?? '';
const MINUTE_MS = 60_000;

function doneBefore(id: string): readonly Event[] {
  const at = BENCH.steps.findIndex(step => step.id === id);
  return BENCH.steps
    .slice(0, at)
    .map(({ id: step }): Event => ({ kind: 'step-done', atMs: TUESDAY_MS, step }));
}

/** In the middle of cutting 25 pieces at one stop. */
const HALF_CUT: readonly Event[] = [
  { kind: 'build-started', atMs: TUESDAY_MS },
  ...doneBefore(CUT_ID),
  { kind: 'step-visited', atMs: TUESDAY_MS, step: CUT_ID },
  { kind: 'piece-done', atMs: TUESDAY_MS + 5 * MINUTE_MS, step: CUT_ID, count: 7 },
];

function pausePage(events: readonly Event[]): string {
  const at = contextWith(buildAfter(events, BENCH), { nowMs: TUESDAY_MS + 10 * MINUTE_MS });
  const used = usedWith(pauseScreen, at).press('enter');
  return viewLines(pauseScreen, used.state, used.at).join('\n').replace(/\s+/g, ' ');
}

function returnPage(events: readonly Event[], days: number): string {
  const nowMs = TUESDAY_MS + days * 24 * 60 * MINUTE_MS;
  const used = usedWith(resumeScreen, contextWith(buildAfter(events, BENCH), { nowMs }));
  return viewLines(resumeScreen, used.state, used.at).join('\n').replace(/\s+/g, ' ');
}

/** Field case F52: where you stopped, what is labelled what, what is next and what to take out first. */
describe('the end of a session between work and family', () => {
  const page = pausePage(HALF_CUT);

  test('says where one stopped, piece by piece', () => {
    expect(page).toContain(
      `You stop at step ${BENCH.steps.findIndex(it => it.id === CUT_ID) + 1} of`,
    );
    expect(page).toMatch(/7 of 25 pieces/);
  });

  test('asks that every piece has its mark, and says how to lay the boards down (F57)', () => {
    expect(page).toMatch(/Every cut piece has its mark.*every 16 to 24 in/);
  });

  test('says what to lay ready for the next one', () => {
    expect(page).toMatch(/Lay ready for next time: miter saw, stop block and clamp, tape measure/);
  });
});

/** Field case F53: done, half done, next action, missing supplies; and a setting that must not be lost. */
describe('back after several days, where was I?', () => {
  const paused: Event = {
    kind: 'paused',
    atMs: TUESDAY_MS + 10 * MINUTE_MS,
    step: CUT_ID,
    note: 'stop is at 18, masking tape on it',
  };
  const page = returnPage([...HALF_CUT, paused], 4);

  test.each([
    ['done', /So far \d+ of 40 steps done/],
    ['half done', /Half done .*7 of 25 pieces/],
    ['the next move, and who makes it', /Next Step \d+: Cut 25 at 18 in.*\(together/],
    ['what to take out', /Take out miter saw, stop block and clamp/],
    ['the note', /Your note stop is at 18, masking tape on it/],
  ])('one screen tells %s', (_, told) => {
    expect(page).toMatch(told);
  });

  test('the setting of the saw is kept at the pause', () => {
    expect(pausePage(HALF_CUT)).toMatch(
      /The stop stands at 18 in, 7 of 25 pieces cut: leave it set/,
    );
  });
});

/** Field case F54: while this dries you can do what does not touch the clamped parts. */
describe('a wait in clamps is no lost day', () => {
  const glued: readonly Event[] = [
    { kind: 'build-started', atMs: TUESDAY_MS },
    ...doneBefore('end-corners'),
    {
      kind: 'timer-started',
      atMs: TUESDAY_MS,
      timer: 'end-corners/clamp',
      name: 'Clamps on the end panels',
      lastsMinutes: 60,
      then: 'Take the clamps off.',
      step: 'end-corners',
    },
    { kind: 'step-done', atMs: TUESDAY_MS, step: 'end-corners' },
  ];

  test('the planter panels can be glued meanwhile; what stands on the end panels waits', () => {
    const free = meanwhile(buildAfter(glued, BENCH), ['end-corners']).map(({ id }) => id);
    expect(free).toContain('box-corners');
    expect(free).not.toContain('stand');
  });
});
