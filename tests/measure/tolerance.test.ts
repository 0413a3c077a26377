import { describe, expect, test } from 'vitest';
import { inches } from '../../src/measure/inch.js';
import { atMost, lengthKey, lessThan, SAME, sameLength } from '../../src/measure/tolerance.js';

test('a sum of ten thirds of an inch is the length it stands for', () => {
  const sum = Array.from({ length: 30 }, () => inches(1 / 3)).reduce((a, b) => a + b, 0);
  expect(sum).not.toBe(inches(10));
  expect(sameLength(sum, inches(10))).toBe(true);
});

test('a hundred-thousandth of a millimeter is a difference, what adding up loses is none', () => {
  expect(sameLength(100, 100.00001)).toBe(false);
  expect(sameLength(100_000, 100_000 * (1 + 4 * Number.EPSILON))).toBe(true);
});

test.each([
  ['equal', 100, 100, true, true, false],
  ['shorter by half the tolerance', 100 - SAME / 2, 100, true, true, false],
  ['longer by half the tolerance', 100 + SAME / 2, 100, true, true, false],
  ['shorter by twice the tolerance', 100 - 2 * SAME, 100, false, true, true],
  ['longer by twice the tolerance', 100 + 2 * SAME, 100, false, false, false],
  ['shorter by 1/64 in', 100 - inches(1 / 64), 100, false, true, true],
])('%s', (_, a, b, same, most, less) => {
  expect(sameLength(a, b)).toBe(same);
  expect(atMost(a, b)).toBe(most);
  expect(lessThan(a, b)).toBe(less);
});

describe('lengths collected by a key', () => {
  test('every mark of a tape, and its halves and thirds, come together though arithmetic lost a little', () => {
    const marks = Array.from({ length: 2000 }, (_, at) => [at / 64, at / 128, at / 192]).flat();
    const apart = marks.filter(mark => {
      const length = inches(mark);
      return (
        lengthKey(length + SAME / 2) !== lengthKey(length - SAME / 2) ||
        lengthKey(length) !== lengthKey(inches(mark + 7) - inches(7))
      );
    });
    expect(apart).toEqual([]);
  });

  test('lengths a 64th of an inch apart do not', () => {
    expect(lengthKey(inches(1 / 8))).not.toBe(lengthKey(inches(1 / 8 + 1 / 64)));
  });
});
