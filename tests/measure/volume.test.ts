import { expect, test } from 'vitest';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import {
  cubicFeet,
  fluidOunces,
  formatSpace,
  formatVolume,
  gallons,
  toCubicFeet,
  toGallons,
} from '../../src/measure/volume.js';

// NIST Handbook 44, Appendix C: US gallon 231 in3 = 3.785411784 L, fluid ounce 29.5735295625 mL;
// NIST SP 811, B.8: 1 ft3 = 0.02831685 m3 (0.028316846592 exactly).
test('gallons, fluid ounces and cubic feet', () => {
  expect(gallons(1)).toBeCloseTo(3785.411784, 9);
  expect(fluidOunces(1)).toBeCloseTo(29.5735295625, 10);
  expect(cubicFeet(1)).toBeCloseTo(28_316_846.592, 5);
  expect(toGallons(gallons(2.5))).toBeCloseTo(2.5, 12);
  expect(toCubicFeet(cubicFeet(2.5))).toBeCloseTo(2.5, 12);
});

test.each([
  [fluidOunces(8), '8 fl oz', '237 ml'],
  [fluidOunces(0.5), '0.5 fl oz', '15 ml'],
  [gallons(0.5), '0.5 gal', '1.9 l'],
  [gallons(1), '1 gal', '3.8 l'],
  [gallons(5), '5 gal', '19 l'],
  [1000, '34 fl oz', '1 l'],
  [999.9, '34 fl oz', '1 l'],
  [0, '0 fl oz', '0 ml'],
])('%d ml is written %s or %s', (volume, inch, metric) => {
  expect(formatVolume(volume, SIXTEENTHS)).toBe(inch);
  expect(formatVolume(volume, MILLIMETERS)).toBe(metric);
});

test('the room in a planter of 2.5 cu ft is 71 l', () => {
  expect(formatSpace(cubicFeet(2.5), SIXTEENTHS)).toBe('2.5 cu ft');
  expect(formatSpace(cubicFeet(2.5), MILLIMETERS)).toBe('71 l');
});
