import { describe, expect, test } from 'vitest';
import type { Context, Screen } from '../../../src/ui/screen.js';
import { pauseScreen } from '../../../src/ui/screens/pause/screen.js';
import { planScreen } from '../../../src/ui/screens/plan/screen.js';
import { resumeScreen } from '../../../src/ui/screens/resume/screen.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import { timersScreen } from '../../../src/ui/screens/timers/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  MINUTE_MS,
  ROOM,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { screenPage } from '../../support/screen-page.js';

/** Half an hour of work on the small bench, an hour ago. */
const BEFORE_MS = TUESDAY_MS - 90 * MINUTE_MS;

const WORKED: readonly Event[] = [
  { kind: 'build-started', atMs: BEFORE_MS },
  ...['miter-saw', 'glue', 'rags'].map(
    (caution): Event => ({ kind: 'briefed', atMs: BEFORE_MS, caution }),
  ),
  { kind: 'step-done', atMs: BEFORE_MS, step: 'measure' },
];

const GLUED: readonly Event[] = [
  ...WORKED,
  { kind: 'step-done', atMs: BEFORE_MS + 10 * MINUTE_MS, step: 'cut/2x4@45' },
  {
    kind: 'timer-started',
    atMs: BEFORE_MS + 20 * MINUTE_MS,
    timer: 'ends/clamp',
    name: 'Clamps on the end panels',
    lastsMinutes: 30,
    then: 'Take the clamps off.',
    step: 'ends',
  },
  { kind: 'step-done', atMs: BEFORE_MS + 21 * MINUTE_MS, step: 'ends' },
  { kind: 'step-visited', atMs: BEFORE_MS + 21 * MINUTE_MS, step: 'rails' },
  { kind: 'piece-done', atMs: BEFORE_MS + 25 * MINUTE_MS, step: 'rails', count: 1 },
  {
    kind: 'note-written',
    atMs: BEFORE_MS + 26 * MINUTE_MS,
    step: 'rails',
    text: 'left rail is tight, plane it',
  },
  { kind: 'paused', atMs: BEFORE_MS + 30 * MINUTE_MS, step: 'rails', note: '' },
];

const HANDED_OVER: readonly Event[] = [
  ...GLUED,
  { kind: 'resumed', atMs: BEFORE_MS + 60 * MINUTE_MS },
  ...['rails', 'seal', 'hand-over'].map(
    (step, number): Event => ({
      kind: 'step-done',
      atMs: BEFORE_MS + (70 + 10 * number) * MINUTE_MS,
      step,
    }),
  ),
];

const SEALED: readonly Event[] = [
  ...GLUED.slice(0, -1),
  { kind: 'step-done', atMs: BEFORE_MS + 40 * MINUTE_MS, step: 'rails' },
  {
    kind: 'timer-started',
    atMs: BEFORE_MS + 80 * MINUTE_MS,
    timer: 'seal/dwell',
    name: 'Sealer soaking in',
    lastsMinutes: 15,
    then: 'Wipe everything.',
    step: 'seal',
  },
];

const BENCH = benchPlan();

/** The bench of the project, every step done up to and without this one. */
function doneBefore(id: string): readonly Event[] {
  const before = BENCH.steps.slice(
    0,
    BENCH.steps.findIndex(step => step.id === id),
  );
  return before.map(({ id: step }): Event => ({ kind: 'step-done', atMs: BEFORE_MS, step }));
}

const GLUED_BENCH: readonly Event[] = [
  { kind: 'build-started', atMs: BEFORE_MS },
  ...doneBefore('end-corners'),
  {
    kind: 'timer-started',
    atMs: BEFORE_MS + 20 * MINUTE_MS,
    timer: 'end-corners/clamp',
    name: 'Clamps on the end panels',
    lastsMinutes: 60,
    then: 'Take the clamps off. Full strength comes tomorrow.',
    step: 'end-corners',
  },
  { kind: 'step-done', atMs: BEFORE_MS + 21 * MINUTE_MS, step: 'end-corners' },
  { kind: 'timer-silenced', atMs: BEFORE_MS + 82 * MINUTE_MS, timer: 'end-corners/clamp' },
  {
    kind: 'paused',
    atMs: BEFORE_MS + 85 * MINUTE_MS,
    step: 'end-infill',
    note: 'clamps are off, panels lean on the back wall',
  },
];

const BEGUN_TO_SEAL: readonly Event[] = [
  { kind: 'build-started', atMs: BEFORE_MS },
  ...doneBefore('seal'),
  { kind: 'step-visited', atMs: BEFORE_MS + MINUTE_MS, step: 'seal' },
  {
    kind: 'timer-started',
    atMs: BEFORE_MS + 20 * MINUTE_MS,
    timer: 'seal/dwell',
    name: 'Sealer soaking in',
    lastsMinutes: 15,
    then: 'Wipe back everything now, end grain too.',
    step: 'seal',
  },
];

const HEARD: Event = { kind: 'briefed', atMs: BEFORE_MS, caution: 'dust' };

/** The page of a screen after these keys, against the page that was looked at. */
async function page<State>(
  screen: Screen<State>,
  name: string,
  { at, keys = '' }: { readonly at: Context; readonly keys?: string },
) {
  const used = usedWith(screen, at).wait(400);
  for (const key of keys.split(' ').filter(it => it !== '')) {
    used.press(key.replaceAll('_', ' ')).wait(400);
  }
  const text = screenPage(screen, used.state, used.at);
  await expect(text).toMatchFileSnapshot(`../../pages/${name}-${at.size.columns}.txt`);
}

function sized(columns: number, events: readonly Event[], rest: Partial<Context> = {}): Context {
  const size = ROOM[columns];
  if (size === undefined) throw new Error('no such window');
  return contextWith(buildAfter(events), { size, ...rest });
}

describe.each([80, 60])('in a window of %i columns', columns => {
  test('a caution is read aloud before its first step', () =>
    page(stepScreen, 'step-briefing', { at: sized(columns, WORKED) }));

  test('the figure to cut to is large, or leads the page', () =>
    page(stepScreen, 'step-cut', { at: sized(columns, [...WORKED, HEARD]), keys: '+' }));

  test('a glue-up shows its picture where there is room, and its timer', () =>
    page(stepScreen, 'step-glue', {
      at: sized(columns, [
        ...WORKED,
        HEARD,
        { kind: 'step-visited', atMs: BEFORE_MS, step: 'ends' },
      ]),
      keys: 'space space',
    }));

  test('the list of steps shows what is done and begun', () =>
    page(stepScreen, 'step-list', { at: sized(columns, GLUED), keys: 'l' }));

  test('undo says what it would take back', () =>
    page(stepScreen, 'step-undo', { at: sized(columns, GLUED), keys: 'u' }));

  test('the timers, and what can be done meanwhile', () =>
    page(timersScreen, 'timers', { at: sized(columns, GLUED) }));

  test('a timer that runs, and what can be done until it ends', () =>
    page(timersScreen, 'timers-running', {
      at: sized(columns, GLUED.slice(0, 7), { nowMs: BEFORE_MS + 25 * MINUTE_MS }),
      keys: 'x',
    }));

  test('what has to be looked after before leaving', () =>
    page(pauseScreen, 'pause', {
      at: sized(columns, GLUED),
      keys: 'typed:right_rail_half_in enter space',
    }));

  test('where it was left', () => page(resumeScreen, 'resume', { at: sized(columns, GLUED) }));

  test('after a coat the rags come first, and nobody leaves before them', () =>
    page(pauseScreen, 'pause-rags', { at: sized(columns, SEALED), keys: 'enter' }));

  test('two days later: what has cured, and whether it is warm and dry enough to go on', () =>
    page(resumeScreen, 'resume-glue', {
      at: sized(columns, [], {
        build: buildAfter(GLUED_BENCH, BENCH),
        nowMs: TUESDAY_MS + 2 * 24 * 60 * MINUTE_MS,
      }),
    }));

  test('where the day was told, it says whether it will do', () => {
    const nowMs = TUESDAY_MS + 2 * 24 * 60 * MINUTE_MS;
    const resumed: Event = { kind: 'resumed', atMs: nowMs };
    // 48 F now, 45 F in the night: 47 F is the least for this glue.
    const told: Event = {
      kind: 'day-told',
      atMs: nowMs,
      work: 'glue',
      now: (48 - 32) / 1.8,
      coldest: (45 - 32) / 1.8,
    };
    return page(resumeScreen, 'resume-cold', {
      at: sized(columns, [], { build: buildAfter([...GLUED_BENCH, resumed, told], BENCH), nowMs }),
    });
  });

  test('and to seal; rags that nobody ticked off are asked for', () =>
    page(resumeScreen, 'resume-seal', {
      at: sized(columns, [], {
        build: buildAfter(BEGUN_TO_SEAL, BENCH),
        nowMs: TUESDAY_MS + 24 * 60 * MINUTE_MS,
      }),
    }));

  test('at the end the pages open at the care sheet', () =>
    page(planScreen, 'care-sheet', { at: sized(columns, HANDED_OVER) }));

  test('the record of the build follows it', () =>
    page(planScreen, 'build-record', { at: sized(columns, HANDED_OVER), keys: 'right' }));

  test('the drawing of the whole piece', () =>
    page(planScreen, 'plan-drawing', { at: sized(columns, []) }));

  test('where the figures are from', () =>
    page(planScreen, 'plan-where-from', { at: sized(columns, []), keys: '2 ?' }));
});

test('a wide window has the picture beside the text', () =>
  page(stepScreen, 'step-cut', { at: sized(120, [...WORKED, HEARD]) }));

test('a plain terminal has the same in ASCII', () =>
  page(stepScreen, 'step-cut-ascii', { at: sized(80, [...WORKED, HEARD], { ascii: true }) }));
