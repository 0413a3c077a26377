import { describe, expect, test } from 'vitest';
import { clockChanged } from '../../src/workbook/clock-changed.js';
import { progressOf } from '../../src/workbook/progress.js';
import {
  endsAtMs,
  isUp,
  remainingMinutes,
  ringing,
  ringsAtMs,
  timerWords,
} from '../../src/workbook/timers.js';
import type { Timer } from '../../src/workbook/workbook.js';
import { clampsOn, HOUR, MINUTE, TUESDAY_14 } from '../support/journal.js';

function timer(lastsMinutes: number, startedAtMs = TUESDAY_14): Timer {
  return {
    id: 'clamp',
    name: 'Clamps',
    step: 's',
    startedAtMs,
    lastsMinutes,
    then: '',
    silenced: false,
  };
}

describe('a timer hangs on the wall clock', () => {
  test('30 min from 14:00 end at 14:30', () => {
    expect(endsAtMs(timer(30))).toBe(TUESDAY_14 + 30 * MINUTE);
    expect(remainingMinutes(timer(30), TUESDAY_14 + 18 * MINUTE)).toBe(12);
    expect(remainingMinutes(timer(30), TUESDAY_14 + HOUR)).toBe(0);
  });

  test('it is up at the very moment it ends, not a millisecond before', () => {
    expect(isUp(timer(30), TUESDAY_14 + 30 * MINUTE - 1)).toBe(false);
    expect(isUp(timer(30), TUESDAY_14 + 30 * MINUTE)).toBe(true);
  });

  test('a clock that was set back makes no wait shorter', () => {
    expect(remainingMinutes(timer(30), TUESDAY_14 - HOUR)).toBe(90);
  });

  test('those that are up and not silenced ring, the first one first', () => {
    const progress = progressOf([
      clampsOn(TUESDAY_14, 60, { timer: 'late' }),
      clampsOn(TUESDAY_14, 20, { timer: 'early' }),
      clampsOn(TUESDAY_14, 10, { timer: 'heard' }),
      clampsOn(TUESDAY_14, 500, { timer: 'running' }),
      { kind: 'timer-silenced', atMs: TUESDAY_14 + 11 * MINUTE, timer: 'heard' },
    ]);
    const ids = (nowMs: number) => ringing(progress, nowMs).map(({ id }) => id);
    expect(ids(TUESDAY_14 + 5 * MINUTE)).toEqual([]);
    expect(ids(TUESDAY_14 + 2 * HOUR)).toEqual(['early', 'late']);
  });
});

describe('a timer in words', () => {
  // Tuesday, November 24, 2026: 14:00 in Greenwich is 09:00 in New York and 19:30 in Kolkata.
  const rows: readonly (readonly [number, number, string, string])[] = [
    [30, 18, 'UTC', '12 min left'],
    [30, 18.2, 'UTC', '12 min left'],
    [30, 29.99, 'UTC', '1 min left'],
    [120, 30, 'UTC', '1 h 30 min left'],
    [240, 0, 'UTC', 'ready 18:00'],
    [240, 0, 'America/New_York', 'ready 13:00'],
    [240, 0, 'Asia/Kolkata', 'ready 23:30'],
    [1050, 0, 'UTC', 'ready Wed 07:30'],
    [600, 0, 'UTC', 'ready Wed 00:00'],
    [600, 0, 'America/New_York', 'ready 19:00'],
    [7 * 1440, 0, 'UTC', 'ready Tue Dec 1 14:00'],
    [30, 30, 'UTC', 'ready now'],
    [30, 42.9, 'UTC', 'ready 12 min ago'],
    [30, 30 + 119, 'UTC', 'ready 1 h 59 min ago'],
    [30, 30 + 239, 'UTC', 'ready 3 h ago'],
    [30, 30 + 51 * 60, 'UTC', 'ready 2 d 3 h ago'],
  ];
  test.each(rows)('%d min after %d min in %s: %s', (lasts, after, zone, words) => {
    expect(timerWords(timer(lasts), TUESDAY_14 + after * MINUTE, zone)).toBe(words);
  });

  test('the night the clocks go back is an hour longer on the wall, not for the glue', () => {
    // New York, November 1, 2026: 02:00 daylight time becomes 01:00 (15 U.S.C. 260a, first Sunday).
    const saturday20 = Date.parse('2026-10-31T20:00:00-04:00');
    const words = timerWords(timer(12 * 60, saturday20), saturday20, 'America/New_York');
    expect(words).toBe('ready Sun 07:00');
  });
});

describe('a clock that jumps', () => {
  const rows: readonly (readonly [string, number, number, ReturnType<typeof clockChanged>])[] = [
    ['a tick of ten seconds', 10_000, 10_000, 'no'],
    ['a nudge by a time server', 10_800, 10_000, 'no'],
    ['a program that was stopped for an hour', HOUR, HOUR, 'no'],
    ['a lid shut for 47 minutes', 47 * MINUTE, 1000, 'slept'],
    ['a lid shut for a fortnight and a bit', 14 * 24 * HOUR + 12_345, 1000, 'slept'],
    ['an hour back', -HOUR, 1000, 'set back'],
    ['six seconds back', -5000, 1000, 'set back'],
    ['an hour forward to the second', HOUR + 1000, 1000, 'set forward'],
    ['nine hours forward: another time zone', 9 * HOUR + 10_020, 10_000, 'set forward'],
    ['from 1970 to now', TUESDAY_14, 1000, 'set forward'],
  ];
  test.each(rows)('%s', (_, wallMs, steadyMs, expected) => {
    const before = { wallMs: 5_000_000, steadyMs: 70_000 };
    const now = { wallMs: before.wallMs + wallMs, steadyMs: before.steadyMs + steadyMs };
    expect(clockChanged(before, now)).toBe(expected);
  });
});

describe('a timer that was put off', () => {
  const journal = [
    clampsOn(TUESDAY_14, 30, { timer: 'clamp' }),
    {
      kind: 'timer-snoozed',
      atMs: TUESDAY_14 + 31 * MINUTE,
      timer: 'clamp',
      untilMs: TUESDAY_14 + 41 * MINUTE,
    },
  ] as const;

  test('is up, but rings again only then', () => {
    const progress = progressOf(journal);
    expect(ringing(progress, TUESDAY_14 + 35 * MINUTE)).toEqual([]);
    expect(ringing(progress, TUESDAY_14 + 41 * MINUTE).map(({ id }) => id)).toEqual(['clamp']);
    const [clamp] = progress.timers;
    expect(clamp && isUp(clamp, TUESDAY_14 + 35 * MINUTE)).toBe(true);
    expect(clamp && timerWords(clamp, TUESDAY_14 + 35 * MINUTE, 'UTC')).toBe(
      'ready 5 min ago, rings again 14:41',
    );
  });
});

describe('a clock that was set back by a day in the middle of a wait', () => {
  const DAY = 24 * HOUR;
  const progress = progressOf([
    clampsOn(TUESDAY_14, 60),
    { kind: 'clock-set-back', atMs: TUESDAY_14 + 20 * MINUTE - DAY, byMs: DAY },
  ]);

  test('the wait still ends after its hour, 40 minutes later', () => {
    const [clamp] = progress.timers;
    if (clamp === undefined) throw new Error('the timer is lost');
    expect(remainingMinutes(clamp, TUESDAY_14 + 20 * MINUTE - DAY)).toBe(40);
    expect(ringsAtMs(clamp)).toBe(TUESDAY_14 + HOUR - DAY);
  });
});
