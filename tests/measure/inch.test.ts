import { expect, test } from 'vitest';
import { feet, inches, toFeet, toInches } from '../../src/measure/inch.js';

// NIST SP 811 (2008), Appendix B.8: 1 in = 25.4 mm and 1 ft = 304.8 mm, both exact.
test('an inch is 25.4 mm and a foot 304.8 mm, exactly', () => {
  expect(inches(1)).toBe(25.4);
  expect(feet(1)).toBe(304.8);
});

test('every 1/64 in up to 10 ft is the number nearest to the exact ratio', () => {
  for (let steps = 0; steps <= 120 * 64; steps += 1) {
    // 1/64 in is 0.396875 mm; whole millionths of a mm stay exact in a double.
    expect(inches(steps / 64)).toBe((steps * 396875) / 1_000_000);
    expect(toInches(inches(steps / 64))).toBe(steps / 64);
  }
});

test('feet come back as feet', () => {
  expect(toFeet(feet(8))).toBe(8);
  expect(toFeet(2438.4)).toBe(8);
});
