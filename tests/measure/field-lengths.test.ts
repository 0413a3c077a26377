import { describe, expect, test } from 'vitest';
import { MILLIMETERS, SIXTEENTHS, THIRTY_SECONDS } from '../../src/measure/displays.js';
import { formatLength, formatLengthExact } from '../../src/measure/format-length.js';
import { inches, toInches } from '../../src/measure/inch.js';
import { parseLength } from '../../src/measure/length.js';
import { snap } from '../../src/measure/round.js';
import { lessThan, sameLength } from '../../src/measure/tolerance.js';

function mm(text: string): number {
  const length = parseLength(text, 'inch');
  if (!length.ok) throw new Error(length.problem);
  return length.value;
}

function inSixteenths(marks: readonly number[]): string[] {
  return marks.map(mark => formatLength(mark, SIXTEENTHS));
}

// Field case F49: a metric bench and inch lumber. Arithmetic; dressed 2x4 is 1-1/2 x 3-1/2 in.
describe('a metric plan in inches', () => {
  test.each([
    ['700 mm', '27-9/16 in', 27.56],
    ['810 mm', '31-7/8 in', 31.89],
    ['90 mm', '3-9/16 in', 3.54],
    ['45 mm', '1-3/4 in', 1.77],
    ['70 mm', '2-3/4 in', 2.76],
  ])('%s is %s', (metric, inch, decimal) => {
    expect(formatLength(mm(metric), SIXTEENTHS)).toBe(inch);
    expect(toInches(mm(metric))).toBeCloseTo(decimal, 2);
  });

  test('a dressed 2x4 is 38 x 89 mm, so two rails in its place are 14 mm thinner', () => {
    expect(formatLength(mm('1-1/2 in'), MILLIMETERS)).toBe('38 mm');
    expect(formatLength(mm('3-1/2 in'), MILLIMETERS)).toBe('89 mm');
    expect(formatLength(2 * (mm('45 mm') - mm('1-1/2 in')), MILLIMETERS)).toBe('14 mm');
  });
});

// Field case F50: 107-5/8 in into fifteen steps. Arithmetic.
describe('107-5/8 in in fifteen equal steps', () => {
  const total = mm('107 5/8 in');
  const step = total / 15;
  const marks = Array.from({ length: 15 }, (_, i) => (i + 1) * step);

  test('one step is 7.175 in, 182.245 mm', () => {
    expect(formatLengthExact(step, SIXTEENTHS)).toBe('7.175 in');
    expect(step).toBeCloseTo(182.245, 9);
    expect(total).toBeCloseTo(2733.675, 9);
  });

  test('rounding each mark alone never errs by more than 1/32 in', () => {
    expect(inSixteenths(marks)).toEqual(
      [
        '7-3/16 14-3/8 21-1/2 28-11/16 35-7/8 43-1/16 50-1/4 57-3/8',
        '64-9/16 71-3/4 78-15/16 86-1/8 93-1/4 100-7/16 107-5/8',
      ].flatMap(line => line.split(' ').map(mark => `${mark} in`)),
    );
    for (const mark of marks) {
      expect(Math.abs(snap(mark, SIXTEENTHS.grid) - mark)).toBeLessThanOrEqual(inches(1 / 32));
    }
  });

  test('stepping the rounded step runs 3/16 in over, whole millimeters 3.7 mm short', () => {
    const stepped = 15 * snap(step, SIXTEENTHS.grid);
    expect(formatLength(stepped, SIXTEENTHS)).toBe('107-13/16 in');
    expect(formatLength(stepped - total, SIXTEENTHS)).toBe('3/16 in');
    expect(total - 15 * snap(step, 1)).toBeCloseTo(3.675, 9);
  });
});

// Field case F51: a tape whose hook is off. Shop practice: more than 1/32 in apart, retire it.
describe('a tape that reads right outside and wrong inside', () => {
  test.each([
    ['46-1/2 in', '46-1/2 in', false],
    ['46-1/2 in', '46-17/32 in', false],
    ['46-1/2 in', '46-9/16 in', true],
    ['46-1/2 in', '46-5/8 in', true],
  ])('%s hooked and %s pushed', (hooked, pushed, retire) => {
    expect(lessThan(inches(1 / 32), Math.abs(mm(hooked) - mm(pushed)))).toBe(retire);
  });

  test('starting from the 1 in mark and taking 1 in off gives the length', () => {
    expect(sameLength(mm('47-17/32 in') - mm('1 in'), mm('46-17/32'))).toBe(true);
    expect(formatLength(mm('47-17/32 in') - mm('1 in'), THIRTY_SECONDS)).toBe('46-17/32 in');
  });
});

// Field cases F01, F02, F03, F05, F07, F08, F09 and F10: the sums of spacing and cutting. Arithmetic.
describe('sums from the shop', () => {
  test('F01: twelve pickets flush on 96 in, marked from one end', () => {
    const gap = (mm("8'") - 12 * mm('5 1/2')) / 11;
    const marks = Array.from({ length: 12 }, (_, i) => i * (mm('5 1/2') + gap));
    expect(formatLength(gap, SIXTEENTHS)).toBe('2-3/4 in');
    expect(inSixteenths(marks)).toEqual(
      [
        '0 8-1/4 16-7/16 24-11/16 32-15/16 41-1/8',
        '49-3/8 57-9/16 65-13/16 74-1/16 82-1/4 90-1/2',
      ].flatMap(line => line.split(' ').map(mark => `${mark} in`)),
    );
    expect(formatLength(12 * mm('5.5') + 11 * mm('2-3/4'), SIXTEENTHS)).toBe('96-1/4 in');
  });

  test('F05: sixteen rails across 119 in, by their centers', () => {
    const step = (mm('119') - mm('1 1/2')) / 15;
    const centers = Array.from({ length: 16 }, (_, i) => mm('3/4') + i * step);
    expect(inSixteenths(centers)).toEqual(
      [
        '3/4 8-9/16 16-7/16 24-1/4 32-1/16 39-15/16 47-3/4 55-9/16',
        '63-7/16 71-1/4 79-1/16 86-15/16 94-3/4 102-9/16 110-7/16 118-1/4',
      ].flatMap(line => line.split(' ').map(mark => `${mark} in`)),
    );
  });

  test.each([
    ['F02: what shows at each end', (mm('61-1/4') - 7 * mm('5.5') - 6 * mm('3.5')) / 2, '7/8 in'],
    ['F03: fifteen balusters on 75 in', (mm('75') - 15 * mm('2')) / 16, '2-13/16 in'],
    ['F08: the second half of a board', mm('96') - mm('48') - mm('1/8'), '47-7/8 in'],
    [
      'F08: and after squaring the end',
      mm('96') - mm('48') - 2 * mm('1/8') - mm('1/4'),
      '47-1/2 in',
    ],
    ['F09: how far in four fronts may start', mm('96') - 4 * (mm('21') + mm('1/8')), '11-1/2 in'],
    ['F10: between two walls', mm('72') - 2 * mm('1-1/2'), '69 in'],
  ])('%s', (_, length, text) => {
    expect(formatLength(length, SIXTEENTHS)).toBe(text);
  });

  test('F07: three pieces of 1 m with two cuts want 3006 mm', () => {
    expect(formatLength(3 * mm('1 m') + 2 * mm('3 mm'), MILLIMETERS)).toBe('3006 mm');
  });
});
