import fc from 'fast-check';
import { expect, test } from 'vitest';
import { formatMinutes, parseDuration } from '../../src/measure/duration.js';

test.each([
  [0, '0 min'],
  [0.5, '30 s'],
  [1, '1 min'],
  [45, '45 min'],
  [59.6, '1 h'],
  [60, '1 h'],
  [90, '1 h 30 min'],
  [120, '2 h'],
  [1439, '23 h 59 min'],
  [1440, '1 d'],
  [3060, '2 d 3 h'],
  [2879, '2 d'],
  [3080, '2 d 3 h'],
  [-90, '-1 h 30 min'],
])('%d minutes are written %s', (minutes, text) => {
  expect(formatMinutes(minutes)).toBe(text);
});

test.each([
  ['90 min', 90],
  ['90m', 90],
  ['45 minutes', 45],
  ['1.5 h', 90],
  ['1,5 h', 90],
  ['1:30', 90],
  ['0:05', 5],
  ['24:00', 1440],
  ['2h', 120],
  ['3 hours', 180],
  ['1 hr.', 60],
  ['1 h 30 min', 90],
  ['1h30min', 90],
  ['2 d 3 h', 3060],
  ['2 days', 2880],
  ['0 min', 0],
])('%s is read as %d minutes', (text, minutes) => {
  expect(parseDuration(text)).toEqual({ ok: true, value: minutes });
});

test.each([
  ['', 'No time'],
  ['90', 'minutes or hours'],
  ['1.5', 'minutes or hours'],
  ['-5 min', 'less than zero'],
  ['soon', 'not a time span'],
  ['1:75', 'not a time span'],
  ['1h30', 'not a time span'],
  ['30 min 2 h', 'not a time span'],
  ['2 h 3 h', 'not a time span'],
  ['5 weeks', 'not a time span'],
  ['1e9 h', 'not a time span'],
  ['500 days', 'more than a year'],
])('%s is refused', (text, words) => {
  const span = parseDuration(text);
  expect(span.ok ? 'read' : span.problem).toContain(words);
});

test('what is written is read back: to the minute below a day, to half an hour above', () => {
  fc.assert(
    fc.property(fc.nat(100_000), minutes => {
      const back = parseDuration(formatMinutes(minutes));
      if (!back.ok) throw new Error(back.problem);
      expect(Math.abs(back.value - minutes)).toBeLessThanOrEqual(minutes < 1440 ? 0 : 30);
    }),
  );
});
