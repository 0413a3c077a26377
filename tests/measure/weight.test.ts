import { expect, test } from 'vitest';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import { formatGrams, formatWeight, pounds, toPounds } from '../../src/measure/weight.js';

// NIST SP 811, B.8: 1 lb (avoirdupois) = 0.45359237 kg, exactly.
test('a pound is 0.45359237 kg', () => {
  expect(pounds(1)).toBe(0.45359237);
  expect(toPounds(pounds(40))).toBeCloseTo(40, 12);
});

test.each([
  [11, '24 lb', '11 kg'],
  [0.45359237, '1 lb', '0.5 kg'],
  [1.5, '3.3 lb', '1.5 kg'],
  [0, '0 lb', '0 kg'],
  [4.53, '10 lb', '4.5 kg'],
])('%d kg is written %s or %s', (kg, inch, metric) => {
  expect(formatWeight(kg, SIXTEENTHS)).toBe(inch);
  expect(formatWeight(kg, MILLIMETERS)).toBe(metric);
});

// NIST SP 811, B.8: 1 oz (avoirdupois) = 28.34952 g.
test.each([
  [28.34952, '1 oz', '28 g'],
  [23, '0.8 oz', '23 g'],
])('%d g is written %s or %s', (grams, inch, metric) => {
  expect(formatGrams(grams, SIXTEENTHS)).toBe(inch);
  expect(formatGrams(grams, MILLIMETERS)).toBe(metric);
});
