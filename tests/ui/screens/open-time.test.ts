import { describe, expect, test } from 'vitest';
import { onDay } from '../../../src/plan/on-day.js';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import { curedAtMs } from '../../../src/workbook/left-standing.js';
import { progressOf } from '../../../src/workbook/progress.js';
import { fromSaved, toSaved } from '../../../src/workbook/saved.js';
import { ringing } from '../../../src/workbook/timers.js';
import {
  allTold,
  benchPlan,
  buildAfter,
  contextWith,
  MINUTE_MS,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';

const PLAN = benchPlan();
const BRIEFED = allTold(PLAN);

/** At the eight planter panels of four joints, everything told and so many joints counted. */
function atPanels(joints: number, more: readonly Event[] = []) {
  const counted: readonly Event[] =
    joints === 0
      ? []
      : [{ kind: 'piece-done', atMs: TUESDAY_MS, step: 'box-corners', count: joints }];
  const events: readonly Event[] = [
    ...BRIEFED,
    { kind: 'day-told', atMs: TUESDAY_MS, work: 'glue' },
    { kind: 'step-visited', atMs: TUESDAY_MS, step: 'box-corners' },
    ...counted,
    ...more,
  ];
  return usedWith(stepScreen, contextWith(buildAfter(events, PLAN))).wait(MINUTE_MS);
}

type Used = ReturnType<typeof atPanels>;

function shown({ state, at }: Used): string {
  return viewLines(stepScreen, state, at).join(' ').replace(/\s+/g, ' ');
}

function started({ asks }: Used) {
  return asks
    .flatMap(ask => (ask.kind === 'record' ? ask.events : []))
    .flatMap(event => (event.kind === 'timer-started' ? [[event.name, event.lastsMinutes]] : []));
}

describe('the open time of a glue-up', () => {
  // Label of Type I PVA, 8 min open at 20 °C; common practice, a fifth in hand and 3 min for clamps: 8 x 0.8 - 3 = 3.4.
  test('is started at the first stroke of the brush by the big key, before a joint is counted', () => {
    const used = atPanels(0);
    expect(shown(used)).toContain('Space at the first stroke: open time 3 min, glue-up 1 of 8');
    used.press('space');
    expect(started(used)).toEqual([['Open time, glue-up 1 of 8', 3]]);
    expect(shown(used)).toContain('Space: one more, 1 of 32 joints');
  });

  test('begins anew with the next panel, not within one', () => {
    expect(started(atPanels(4).press('space'))).toEqual([['Open time, glue-up 2 of 8', 3]]);
    expect(started(atPanels(28).press('space'))).toEqual([['Open time, glue-up 8 of 8', 3]]);
    expect(started(atPanels(5).press('space'))).toEqual([]);
    expect(started(atPanels(32).press('space'))).toEqual([]);
  });

  test('stands among the timers of the step before the clamps, on the same key', () => {
    expect(started(atPanels(0).press('t').press('1'))).toEqual([['Open time, glue-up 1 of 8', 3]]);
    expect(shown(atPanels(0).press('t'))).toContain('2 Clamps on the planter panels');
  });

  test('which glue-up, its pieces, clamps and open time stand above what to do', () => {
    const page = shown(atPanels(8));
    const places = [
      'Glue-up 3 of 8: 4 joints of 2 posts and 2 panel rails',
      'Clamps 2 each; with 10 nobody waits',
      'Open 8 min from first stroke; begin to clamp by minute 3',
      '- Dry first',
      'Screws',
    ].map(words => page.indexOf(words));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });
});

describe('the ring of the open time', () => {
  const open: Event = {
    kind: 'timer-started',
    atMs: TUESDAY_MS,
    timer: 'box-corners/open.time',
    name: 'Open time, glue-up 1 of 8',
    lastsMinutes: 3,
    then: 'Clamp now.',
    step: 'box-corners',
  };
  const clamps: Event = { ...open, timer: 'end-corners/clamp', name: 'Clamps', lastsMinutes: 60 };
  const counted = (minutes: number): Event => ({
    kind: 'piece-done',
    atMs: TUESDAY_MS + minutes * MINUTE_MS,
    step: 'box-corners',
    count: 1,
  });
  const rings = (events: readonly Event[], minutes: number) =>
    ringing(progressOf(events), TUESDAY_MS + minutes * MINUTE_MS).map(({ name }) => name);

  test('says to clamp, with so much left as the label leaves', () => {
    const row = PLAN.glueUps.find(({ step }) => step === 'box-corners');
    expect(row?.open.then).toBe(
      'Clamp now. In 5 min the glue skins: what is still open then is scraped off and brushed anew.',
    );
    const infill = PLAN.glueUps.find(({ step }) => step === 'box-infill');
    expect(infill?.open.then).toMatch(/^Close and brad now/);
  });

  test('comes beside clamps that run, and after the program was shut in between', () => {
    expect(rings([clamps, open], 2)).toEqual([]);
    expect(rings([clamps, open], 3)).toEqual(['Open time, glue-up 1 of 8']);
    const build = buildAfter([clamps, open], PLAN);
    const loaded = fromSaved(JSON.parse(JSON.stringify(toSaved(build.workbook))));
    if (!loaded.ok) throw new Error('it was saved a moment ago');
    expect(rings(loaded.workbook.events, 4)).toEqual(['Open time, glue-up 1 of 8']);
  });

  test('is heard by whoever counts a joint after it, and is over with the step', () => {
    expect(rings([open, counted(2)], 4)).toHaveLength(1);
    expect(rings([open, counted(4)], 4)).toEqual([]);
    const done: Event = { kind: 'step-done', atMs: TUESDAY_MS, step: 'box-corners' };
    expect(rings([open, done], 4)).toEqual([]);
  });
});

describe('beside young glue', () => {
  // Glue maker's guide: unstressed 30 to 60 min, no stress before 24 h; twice as long for each 10 °C colder: at 10 °C
  // 2 h and 48 h.
  const told = (plan: typeof PLAN) =>
    plan.steps
      .find(({ id }) => id === 'box-corners')
      ?.settings.find(({ name }) => name === 'Meanwhile')?.text;

  test('the step says what goes on beside the clamps, and what the joints bear when', () => {
    expect(told(PLAN)).toContain('other work goes on; screws and brads hold these parts');
    expect(told(PLAN)).toMatch(/After 1 h they may be carried .* before 1 d\.$/);
    expect(told(onDay(PLAN, { atMs: TUESDAY_MS, now: 10, moisturePercent: 12 }))).toMatch(
      /After 2 h they may be carried .* before 2 d\.$/,
    );
  });

  test('it cures as long as the cold of its day asks, also once that day is over', () => {
    const cold: Event = { kind: 'day-told', atMs: TUESDAY_MS, work: 'glue', now: 10 };
    const clamps: Event = {
      kind: 'timer-started',
      atMs: TUESDAY_MS,
      timer: 'box-corners/clamp',
      name: 'Clamps',
      lastsMinutes: 120,
      then: '',
      step: 'box-corners',
    };
    const { workbook } = buildAfter([cold, clamps], PLAN);
    expect(curedAtMs({ workbook, plan: PLAN })).toBe(TUESDAY_MS + 48 * 60 * MINUTE_MS);
  });

  test('open glue left at a pause does not ring days later', () => {
    const paused: Event = { kind: 'paused', atMs: TUESDAY_MS, step: 'box-corners', note: '' };
    const open: Event = {
      kind: 'timer-started',
      atMs: TUESDAY_MS,
      timer: 'box-corners/open.time',
      name: 'Open time, glue-up 1 of 8',
      lastsMinutes: 3,
      then: '',
      step: 'box-corners',
    };
    expect(progressOf([open, paused]).timers).toEqual([]);
  });
});

describe('in the heat', () => {
  // 8 min at 20 °C; at 25 °C 8 / 2^0.5 = 5.7, told as 5: 5 x 0.8 - 3 = 1 min for the brush.
  const hot = onDay(PLAN, { atMs: TUESDAY_MS, now: 25, moisturePercent: 12 });

  test('clamps go on sooner, and fewer joints are one glue-up', () => {
    const row = hot.glueUps.find(({ step }) => step === 'box-corners');
    expect(row?.open.minutes).toBe(1);
    // Two people close a joint in 0.275 min: three of them in a minute, and the fourth alone.
    expect(row?.sizes.slice(0, 4)).toEqual([3, 1, 3, 1]);
    expect(row?.count.value).toBe(16);
  });

  test('the step tells the glue-ups of this day', () => {
    const step = hot.steps.find(({ id }) => id === 'box-corners');
    const told = step?.settings.filter(({ name }) => name === 'Glue-ups').map(({ text }) => text);
    expect(told).toEqual(['16, one after the other']);
  });
});
