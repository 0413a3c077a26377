import { expect, test } from 'vitest';
import { inches } from '../../src/measure/inch.js';
import { atMost, lessThan, SAME, sameLength } from '../../src/measure/tolerance.js';

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
