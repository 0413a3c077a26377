import { describe, expect, test } from 'vitest';
import { parseDay, weekdayOf } from '../../src/measure/calendar.js';
import { daysText, parseDays } from '../../src/recipe/answers/days-answer.js';

describe('a day of the calendar', () => {
  // ISO 8601 for the first form; the others are how people write a date with the month in letters.
  test.each([
    ['2026-12-04', '2026-12-04'],
    ['Dec 4 2026', '2026-12-04'],
    ['4 December 2026', '2026-12-04'],
    ['February 29, 2028', '2028-02-29'],
  ])('%s', (typed, day) => {
    expect(parseDay(typed)).toEqual({ ok: true, value: day });
  });

  test.each([
    ['12/4/2026', '"12/4/2026" can be month 12, day 4, or the other way round.'],
    ['2026-02-29', 'No calendar has the day "2026-02-29".'],
    ['Dec 4', '"Dec 4" is not a day of the calendar.'],
    ['soon', '"soon" is not a day of the calendar.'],
  ])('%s is refused', (typed, problem) => {
    expect(parseDay(typed)).toMatchObject({ ok: false, problem });
  });

  // January 1, 2000 was a Saturday and July 20, 1969 a Sunday: any almanac.
  test.each([
    ['2000-01-01', 'sat'],
    ['1969-07-20', 'sun'],
  ])('%s falls on its weekday', (day, weekday) => {
    expect(weekdayOf(day)).toBe(weekday);
  });
});

describe('the days on which somebody works', () => {
  test('weekdays with the usual hours, a Saturday with its own', () => {
    const read = parseDays('Tue Thu, Sat 9:00-16:00');
    expect(read).toEqual({
      ok: true,
      value: [{ on: 'tue' }, { on: 'thu' }, { on: 'sat', from: 540, to: 960 }],
    });
    expect(read.ok && daysText(read.value)).toBe('Tue Thu, Sat 9:00-16:00');
  });

  test.each([
    ['weekdays', 'Mon Tue Wed Thu Fri'],
    ['every day', 'every day'],
    ['tuesday and thursday', 'Tue Thu'],
    ['Sat 9 am-4 pm', 'Sat 9:00-16:00'],
    ['Sat 9 am to 4 pm', 'Sat 9:00-16:00'],
    ['2026-12-04, 2026-12-05 9:00-16:00', 'Dec 4 2026, Dec 5 2026 9:00-16:00'],
  ])('%s is understood', (typed, text) => {
    const read = parseDays(typed);
    expect(read.ok ? daysText(read.value) : read).toBe(text);
  });

  test.each([
    ['someday', '"someday" is not a day.'],
    ['Sat 16:00-9:00', '"Sat 16:00-9:00" ends before it begins.'],
    ['Tue, Tue', 'Tue is named twice.'],
    ['', 'No day is named.'],
  ])('%s is refused', (typed, problem) => {
    expect(parseDays(typed)).toMatchObject({ ok: false, problem });
  });

  test('what is written is read back as the same days', () => {
    for (const typed of ['Tue Thu, Sat 9:00-16:00', '2026-12-04, Sat 9:00-16:00', 'weekends']) {
      const read = parseDays(typed);
      if (!read.ok) throw new Error(read.problem);
      expect(parseDays(daysText(read.value))).toEqual(read);
    }
  });
});
