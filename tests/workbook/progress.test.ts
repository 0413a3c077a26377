import { performance } from 'node:perf_hooks';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Event } from '../../src/workbook/events.js';
import { advance, progressOf } from '../../src/workbook/progress.js';
import { nextToTakeBack } from '../../src/workbook/taken-back.js';
import { clampsOn, HOUR, MINUTE, TUESDAY_14 } from '../support/journal.js';
import { anyEvent, anyJournal } from './events-in-test.js';

const START: Event = { kind: 'build-started', atMs: TUESDAY_14 };

/** Three posts, then two more, a check, and the step is ticked off. */
function postsCut(): readonly Event[] {
  const step = 'cut-frame/1';
  return [
    START,
    { kind: 'step-visited', atMs: TUESDAY_14 + MINUTE, step },
    { kind: 'piece-done', atMs: TUESDAY_14 + 10 * MINUTE, step, count: 3 },
    { kind: 'piece-done', atMs: TUESDAY_14 + 15 * MINUTE, step, count: 2 },
    { kind: 'check-made', atMs: TUESDAY_14 + 16 * MINUTE, step, check: 0 },
    { kind: 'step-done', atMs: TUESDAY_14 + 17 * MINUTE, step },
  ];
}

function takenBack(minutes: number): Event {
  return { kind: 'taken-back', atMs: TUESDAY_14 + minutes * MINUTE };
}

describe('a journal tells where a build stands', () => {
  test('nothing written, nothing known', () => {
    const { started, done, tallies, rackChanges, workedMs, lastAtMs } = progressOf([]);
    expect([started, done.size, tallies.size, rackChanges, workedMs]).toEqual([false, 0, 0, [], 0]);
    expect(lastAtMs).toBe(undefined);
  });

  test('pieces of one step add up, checks and steps are ticked', () => {
    const progress = progressOf(postsCut());
    expect(progress.started).toBe(true);
    expect(progress.tallies).toEqual(new Map([['cut-frame/1', 5]]));
    expect(progress.checks).toEqual(new Set(['cut-frame/1#0']));
    expect(progress.done).toEqual(new Set(['cut-frame/1']));
    expect(progress.lastStep).toBe('cut-frame/1');
    expect(progress.lastAtMs).toBe(TUESDAY_14 + 17 * MINUTE);
  });

  test('a timer is there until it is stopped, silenced or not', () => {
    const on = [START, clampsOn(TUESDAY_14, 30)];
    const { timers } = progressOf(on);
    expect(timers).toMatchObject([{ id: 'end-corners/clamp', silenced: false, lastsMinutes: 30 }]);
    const silenced: Event = {
      kind: 'timer-silenced',
      atMs: TUESDAY_14 + 31 * MINUTE,
      timer: 'end-corners/clamp',
    };
    expect(progressOf([...on, silenced]).timers).toMatchObject([{ silenced: true }]);
    const stopped: Event = { ...silenced, kind: 'timer-stopped' };
    expect(progressOf([...on, silenced, stopped]).timers).toEqual([]);
  });

  test('a timer that is started again counts from the second start and rings again', () => {
    const again = [
      clampsOn(TUESDAY_14, 30),
      { kind: 'timer-silenced', atMs: TUESDAY_14 + HOUR, timer: 'end-corners/clamp' } as const,
      clampsOn(TUESDAY_14 + 2 * HOUR, 30),
    ];
    expect(progressOf(again).timers).toMatchObject([
      { startedAtMs: TUESDAY_14 + 2 * HOUR, silenced: false },
    ]);
  });

  test('notes, briefings and pauses are kept', () => {
    const step = 'notch-rails';
    const events: readonly Event[] = [
      START,
      { kind: 'note-written', atMs: TUESDAY_14 + 1, step, text: 'fence at 44' },
      { kind: 'briefed', atMs: TUESDAY_14 + 2, caution: 'dust' },
      { kind: 'paused', atMs: TUESDAY_14 + 3, step, note: 'two rails left' },
    ];
    const paused = progressOf(events);
    expect(paused.notes).toEqual([
      { atMs: TUESDAY_14 + 1, step, text: 'fence at 44' },
      { atMs: TUESDAY_14 + 3, step, text: 'two rails left' },
    ]);
    expect(paused.briefed).toEqual(new Set(['dust']));
    expect(paused.paused).toEqual({ atMs: TUESDAY_14 + 3, step, note: 'two rails left' });
    expect(progressOf([...events, { kind: 'resumed', atMs: TUESDAY_14 + HOUR }]).paused).toBe(
      undefined,
    );
  });
});

describe('taking back', () => {
  test('one goes back over the last thing done, several go further', () => {
    const events = postsCut();
    const after = [1, 2, 3, 4, 5].map(times => {
      const takes = Array.from({ length: times }, (_, i) => takenBack(20 + i));
      const { done, checks, tallies } = progressOf([...events, ...takes]);
      return [done.size, checks.size, tallies.get('cut-frame/1') ?? 0];
    });
    expect(after).toEqual([
      [0, 1, 5],
      [0, 0, 5],
      [0, 0, 3],
      [0, 0, 0],
      [0, 0, 0],
    ]);
  });

  test('comings and goings are passed over', () => {
    const step = 'cut-frame/1';
    const events: readonly Event[] = [
      START,
      { kind: 'piece-done', atMs: TUESDAY_14 + 1, step, count: 1 },
      { kind: 'paused', atMs: TUESDAY_14 + 2, step, note: '' },
      { kind: 'resumed', atMs: TUESDAY_14 + 3 },
      { kind: 'step-visited', atMs: TUESDAY_14 + 4, step: 'seal' },
    ];
    expect(nextToTakeBack(events)).toEqual(events[1]);
    const back = progressOf([...events, takenBack(1)]);
    expect(back.tallies.size).toBe(0);
    expect(back.started).toBe(true);
    expect(back.lastStep).toBe('seal');
  });

  test('what is done after taking back is the next to be taken back', () => {
    const step = 'cut-frame/1';
    const piece = (count: number): Event => ({
      kind: 'piece-done',
      atMs: TUESDAY_14 + count,
      step,
      count,
    });
    const events = [START, piece(1), piece(2), takenBack(1), piece(4), takenBack(2), takenBack(3)];
    expect(progressOf(events).tallies.size).toBe(0);
    expect(nextToTakeBack(events)).toBe(undefined);
    expect(progressOf(events.slice(0, 6)).tallies.get(step)).toBe(1);
  });

  test('a timer stopped by mistake runs on as it did', () => {
    const on = [START, clampsOn(TUESDAY_14, 30)];
    const stopped: Event = {
      kind: 'timer-stopped',
      atMs: TUESDAY_14 + MINUTE,
      timer: 'end-corners/clamp',
    };
    expect(progressOf([...on, stopped, takenBack(2)]).timers).toEqual(progressOf(on).timers);
  });

  test('any journal with nothing in it but work can be taken back to its beginning', () => {
    const work = anyJournal.map(events => events.filter(({ kind }) => kind === 'piece-done'));
    fc.assert(
      fc.property(work, events => {
        const all = [...events, ...events.map((_, i) => takenBack(i))];
        expect(progressOf(all).tallies.size).toBe(0);
      }),
    );
  });
});

describe('the time worked', () => {
  const piece = (atMs: number): Event => ({ kind: 'piece-done', atMs, step: 's', count: 1 });
  const rows: readonly (readonly [string, readonly Event[], number])[] = [
    ['silences up to 90 min count', [START, piece(TUESDAY_14 + 90 * MINUTE)], 90],
    ['a longer one was spent elsewhere', [START, piece(TUESDAY_14 + 91 * MINUTE)], 0],
    [
      'a pause does not count',
      [
        START,
        { kind: 'paused', atMs: TUESDAY_14 + 20 * MINUTE, step: 's', note: '' },
        { kind: 'resumed', atMs: TUESDAY_14 + 50 * MINUTE },
        piece(TUESDAY_14 + 60 * MINUTE),
      ],
      20 + 10,
    ],
    ['a clock that was set back takes nothing away', [START, piece(TUESDAY_14 - HOUR)], 0],
    [
      'what was taken back took its time all the same',
      [START, piece(TUESDAY_14 + 30 * MINUTE), takenBack(40)],
      40,
    ],
  ];
  test.each(rows)('%s', (_, events, minutes) => {
    expect(progressOf(events).workedMs).toBe(minutes * MINUTE);
  });
});

test('going on by one entry is the same as reading the journal anew', () => {
  fc.assert(
    fc.property(anyJournal, anyEvent, (events, event) => {
      fc.pre(event.kind !== 'taken-back');
      const before = progressOf(events);
      const copy = structuredClone(before);
      expect(advance(before, event)).toEqual(progressOf([...events, event]));
      expect(before, 'the one before is left alone').toEqual(copy);
    }),
  );
});

test('a journal of 2,000 entries is read in less than 5 ms', () => {
  const events = fc.sample(anyEvent, { numRuns: 2000, seed: 7 });
  const times = Array.from({ length: 15 }, () => {
    const start = performance.now();
    progressOf(events);
    return performance.now() - start;
  });
  expect(Math.min(...times)).toBeLessThan(5);
});
