import { describe, expect, test } from 'vitest';
import { sunsetOn } from '../../src/materials/sunset.js';

const DAYS = { 'March 20': 79, 'June 21': 172, 'September 22': 265, 'December 21': 355 } as const;

// Almanacs, from memory: at 45 degrees north the longest day has 15 h 37 min and the shortest 8 h 46 min from the first
// to the last of the sun; air and the width of the sun lengthen each by some 10 min over what the angle alone says.
describe('sunset by the sun at 45 degrees north', () => {
  test.each([
    ['March 20', 12 * 60],
    ['June 21', 15 * 60 + 37],
    ['September 22', 12 * 60],
    ['December 21', 8 * 60 + 46],
  ] as const)('%s', (day, daylight) => {
    const off = sunsetOn(DAYS[day]) - (12 * 60 + daylight / 2);
    expect(off).toBeLessThanOrEqual(5);
    expect(off).toBeGreaterThanOrEqual(-10);
  });
});
