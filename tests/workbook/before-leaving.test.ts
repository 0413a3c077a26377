import { describe, expect, test } from 'vitest';
import { beforeLeaving } from '../../src/workbook/before-leaving.js';
import type { Event } from '../../src/workbook/events.js';
import { progressOf } from '../../src/workbook/progress.js';
import { build, clampsOn, HOUR, MINUTE, step, TUESDAY_14 } from '../support/journal.js';

const STEPS = [
  step('cut-frame/1', { phase: 'cut', tally: { of: 'piece', count: 12 } }),
  step('end-corners', { phase: 'assemble' }),
  step('slats', { phase: 'assemble' }),
  step('seal', { phase: 'finish' }),
];
const START: Event = { kind: 'build-started', atMs: TUESDAY_14 };

function leaving(events: readonly Event[], nowMs: number) {
  const journal = [START, ...events];
  const progress = progressOf(journal);
  return beforeLeaving({
    workbook: build(journal),
    steps: STEPS,
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
      ['timer:end-corners/clamp', 'glue', 'batteries'],
    ],
    [
      'clamps off after an hour: the glue still needs its day',
      [clampsOn(TUESDAY_14, 60)],
      23,
      ['glue', 'batteries'],
    ],
    ['a day later it has set', [clampsOn(TUESDAY_14, 60)], 24, ['batteries']],
    [
      'a coat was worked on: rags first (field case F36)',
      [wiped],
      2,
      ['rags', 'timer:dry', 'batteries'],
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
