import { expect, test } from 'vitest';
import { formatAbout, formatNumber } from '../../src/measure/format-number.js';

test.each([
  [2.5, 2, '2.5'],
  [2, 2, '2'],
  [100, 0, '100'],
  [1200, 1, '1200'],
  [-0.001, 2, '0'],
  [-0.4, 0, '0'],
  [0.125, 3, '0.125'],
])('%d with at most %d decimals', (value, places, text) => {
  expect(formatNumber(value, places)).toBe(text);
});

test.each([
  [1.19, '1.2'],
  [9.94, '9.9'],
  [9.96, '10'],
  [37.6, '38'],
  [0.04, '0'],
])('about %d', (value, text) => {
  expect(formatAbout(value)).toBe(text);
});
