import { describe, expect, test } from 'vitest';
import type { Plan } from '../../src/plan/plan.js';
import { beforeLeaving } from '../../src/workbook/before-leaving.js';
import type { Event } from '../../src/workbook/events.js';
import { neededNext } from '../../src/workbook/needed-next.js';
import { progressOf } from '../../src/workbook/progress.js';
import { ragsNow, ragsOf } from '../../src/workbook/rags.js';
import { build, clampsOn, HOUR, MINUTE, step, TUESDAY_14 } from '../support/journal.js';
import { smallPlan } from '../support/small-plan.js';

const STEPS = [
  step('cut-frame/1', {
    phase: 'cut',
    tools: ['miter-saw'],
    tally: { of: 'piece', count: 12 },
    big: { text: '18 in', caption: 'stop' },
  }),
  step('end-corners', { phase: 'assemble' }),
  step('slats', { phase: 'assemble' }),
  step('seal', { phase: 'finish', care: ['sealer', 'rags'] }),
  step('sand', { phase: 'finish', care: ['dust'] }),
];
const PLAN: Plan = { ...smallPlan(), steps: STEPS, hardware: [] };
const START: Event = { kind: 'build-started', atMs: TUESDAY_14 };

function leaving(events: readonly Event[], nowMs: number) {
  const journal = [START, ...events];
  const progress = progressOf(journal);
  return beforeLeaving({
    workbook: build(journal),
    plan: PLAN,
    progress,
    toBuy: [],
    nowMs,
    zone: 'UTC',
  });
}

function idsOf(events: readonly Event[], nowMs: number): readonly string[] {
  return leaving(events, nowMs).map(({ id }) => id);
}

const done = (id: string, hours: number): Event => ({
  kind: 'step-done',
  atMs: TUESDAY_14 + hours * HOUR,
  step: id,
});
const wiped: Event = { ...clampsOn(TUESDAY_14 + HOUR, 240), timer: 'dry', step: 'seal' };

describe('before the door is shut', () => {
  const rows: readonly (readonly [string, readonly Event[], number, readonly string[]])[] = [
    ['nothing done: only the tools', [], 1, ['batteries']],
    [
      'cutting begun: boards flat and weighted (field case F57)',
      [{ kind: 'piece-done', atMs: TUESDAY_14, step: 'cut-frame/1', count: 1 }],
      1,
      ['set:cut-frame/1', 'stack', 'batteries'],
    ],
    [
      'the stop has done its pieces: nothing to leave set',
      [{ kind: 'piece-done', atMs: TUESDAY_14, step: 'cut-frame/1', count: 12 }],
      1,
      ['stack', 'batteries'],
    ],
    [
      'all boards fixed: nothing left to stack',
      [done('cut-frame/1', 1), done('end-corners', 2), done('slats', 3)],
      4,
      ['batteries'],
    ],
    [
      'clamps on: they stay, and the glue needs its day (field cases F21 and F22)',
      [clampsOn(TUESDAY_14, 60)],
      0.5,
      ['timer:end-corners/clamp', 'glue', 'cover', 'batteries'],
    ],
    [
      'clamps off after an hour: the glue still needs its day',
      [clampsOn(TUESDAY_14, 60)],
      23,
      ['glue', 'cover', 'batteries'],
    ],
    ['a day later it has set', [clampsOn(TUESDAY_14, 60)], 24, ['batteries']],
    [
      'a coat was worked on: rags first (field case F36)',
      [wiped],
      2,
      ['rags', 'timer:dry', 'cover', 'batteries'],
    ],
    [
      'the coat was in an earlier session: those rags are gone',
      [
        wiped,
        { kind: 'paused', atMs: TUESDAY_14 + 6 * HOUR, step: 'seal', note: '' },
        { kind: 'resumed', atMs: TUESDAY_14 + 40 * HOUR },
      ],
      41,
      ['batteries'],
    ],
    [
      'a coat ticked by mistake and taken back',
      [done('seal', 1), { kind: 'taken-back', atMs: TUESDAY_14 + HOUR }],
      2,
      ['batteries'],
    ],
  ];
  test.each(rows)('%s', (_, events, hours, ids) => {
    expect(idsOf(events, TUESDAY_14 + hours * HOUR)).toEqual(ids);
  });

  test('it says until when, and what comes then', () => {
    const [clamps, glue] = leaving([clampsOn(TUESDAY_14, 60)], TUESDAY_14 + 5 * MINUTE);
    expect(clamps?.say).toMatch(/^Clamps on the end panels: until 15:00\./);
    expect(clamps?.why).toBe('Then: Take the clamps off.');
    expect(glue?.say).toMatch(/until Wed 14:00/);
  });

  test('glue that cures longer than a day in the cold is told so', () => {
    const cold = { timer: 'cure', name: 'Glue curing' };
    const [, glue] = leaving([clampsOn(TUESDAY_14, 48 * 60, cold)], TUESDAY_14 + 30 * HOUR);
    expect(glue?.say).toMatch(/until Thu 14:00/);
  });

  test('every line names where it is from, and none says that anything is safe', () => {
    for (const { say, why, source } of leaving([clampsOn(TUESDAY_14, 60), wiped], TUESDAY_14)) {
      expect(source.publication).not.toBe('');
      expect(`${say} ${why}`).not.toMatch(/\bsafe/i);
    }
  });
});

/** Field case F36: a step that must be ticked before the session can close. */
describe('rags with oil on them', () => {
  const laid: Event = { kind: 'rags-laid', atMs: TUESDAY_14 + 2 * HOUR };
  const rags = (events: readonly Event[]) =>
    leaving(events, TUESDAY_14 + 3 * HOUR).find(({ id }) => id === 'rags');

  test('nobody leaves before they are wet in a lidded can, or flat and single outdoors', () => {
    expect(rags([wiped])).toMatchObject({ must: true, seen: false });
    expect(rags([wiped])?.say).toMatch(/metal can full of water.*spread flat, single, outdoors/);
  });

  test('ticked, they are seen to; a coat after that makes new ones', () => {
    expect(rags([wiped, laid])).toMatchObject({ seen: true });
    expect(rags([wiped, laid, done('seal', 2.5)])).toMatchObject({ seen: false });
  });

  test('a tick that is taken back does not count', () => {
    const back: Event = { kind: 'taken-back', atMs: TUESDAY_14 + 2 * HOUR };
    expect(rags([wiped, laid, back])).toMatchObject({ seen: false });
  });

  test('sanding makes no oily rags', () => {
    expect(rags([done('sand', 1)])).toBe(undefined);
  });

  test('a water-borne finish is told of, and holds nobody back', () => {
    const plan = { ...PLAN, sealer: { ...PLAN.sealer, hotRags: false } };
    const oiled = { workbook: build([START, wiped]), plan };
    expect(ragsOf(oiled)).toMatchObject([{ must: false }]);
    expect(ragsNow(oiled)).toBe('none');
  });

  test('a program that was killed, without a pause, still asks for them the next day', () => {
    const visited: Event = { kind: 'step-visited', atMs: TUESDAY_14 + 30 * HOUR, step: 'seal' };
    expect(ragsNow({ workbook: build([START, wiped, visited]), plan: PLAN })).toBe('due');
  });
});

describe('what to have by next time', () => {
  const steps = [
    step('saw', { phase: 'cut' }),
    step('glue', {
      phase: 'assemble',
      care: ['glue'],
      settings: [{ name: 'Screws', text: '8 x No. 8 x 3 in' }],
    }),
    step('glue-more', { phase: 'assemble', care: ['glue'] }),
    step('seal', { phase: 'finish', care: ['sealer'] }),
  ];
  const [session] = smallPlan().time.sessions;
  if (session === undefined) throw new Error('no session');
  const plan: Plan = {
    ...smallPlan(),
    steps,
    hardware: ['Glue: PVA', 'Sealer: oil', 'No. 8 x 3 in', 'No. 10 x 2 in'].map(what => ({
      what,
      count: smallPlan().weight,
      buy: '1 x box',
      note: '',
    })),
    time: {
      ...smallPlan().time,
      sessions: [['saw'], ['glue'], ['glue-more'], ['seal']].map((ids, number) => ({
        ...session,
        number: number + 1,
        steps: ids,
      })),
    },
  };
  const needed = (...ids: readonly string[]) => {
    const events = [START, ...ids.map((id, hours) => done(id, hours))];
    return neededNext({ plan, progress: progressOf(events) });
  };

  test('what the next session uses for the first time', () => {
    expect(needed()).toEqual(['Glue: PVA (1 x box)', 'No. 8 x 3 in (1 x box)']);
  });

  test('what was in use already is at hand', () => {
    expect(needed('saw', 'glue')).toEqual(['Sealer: oil (1 x box)']);
  });

  test('screws of a step that is under way are there, and may be used up: none are bought for it', () => {
    const driven: Event = { kind: 'piece-done', atMs: TUESDAY_14, step: 'glue', count: 4 };
    const events = [START, done('saw', 1), driven];
    expect(neededNext({ plan, progress: progressOf(events) })).toEqual([]);
  });

  test('nothing more when all is done', () => {
    expect(needed('saw', 'glue', 'glue-more', 'seal')).toEqual([]);
  });
});

test('tools are named that were in use', () => {
  const sawn: Event = { kind: 'piece-done', atMs: TUESDAY_14, step: 'cut-frame/1', count: 1 };
  const last = leaving([sawn], TUESDAY_14 + HOUR).at(-1);
  expect(last?.say).toMatch(/^Unplug the miter saw\./);
});
