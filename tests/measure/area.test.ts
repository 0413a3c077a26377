import { expect, test } from 'vitest';
import {
  formatArea,
  squareFeet,
  squareInches,
  squareMeters,
  toSquareFeet,
  toSquareMeters,
} from '../../src/measure/area.js';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';

// NIST SP 811, B.8: 1 ft2 = 0.09290304 m2 and 1 in2 = 645.16 mm2, both exact.
test('square feet, inches and meters', () => {
  expect(squareFeet(1)).toBeCloseTo(92_903.04, 8);
  expect(squareInches(1)).toBeCloseTo(645.16, 10);
  expect(squareFeet(1)).toBeCloseTo(squareInches(144), 8);
  expect(toSquareFeet(squareFeet(38))).toBeCloseTo(38, 12);
  expect(toSquareMeters(squareMeters(3.5))).toBe(3.5);
});

test.each([
  [squareFeet(38), '38 sq ft', '3.5 m2'],
  [squareFeet(1.19), '1.2 sq ft', '0.1 m2'],
  [squareInches(12.25), '12 sq in', '79 cm2'],
  [0, '0 sq in', '0 cm2'],
])('%d mm2 is written %s or %s', (area, inch, metric) => {
  expect(formatArea(area, SIXTEENTHS)).toBe(inch);
  expect(formatArea(area, MILLIMETERS)).toBe(metric);
});
