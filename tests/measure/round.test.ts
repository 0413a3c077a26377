import fc from 'fast-check';
import { expect, test } from 'vitest';
import { feet, inches } from '../../src/measure/inch.js';
import {
  fromUnits,
  gridSteps,
  snap,
  snapDown,
  tidy,
  toUnits,
  UNITS_PER_MM,
} from '../../src/measure/round.js';
import { SAME } from '../../src/measure/tolerance.js';

const ways = ['nearest', 'up', 'down'] as const;

test.each([
  [69.27, inches(1 / 16), 69.85, 69.85, 68.2625],
  [0.4, 1, 0, 1, 0],
  [0.5, 1, 1, 1, 0],
  [1181.1, 1, 1181, 1182, 1181],
  [-0.5, 1, -1, 0, -1],
  [1181.3, 0.5, 1181.5, 1181.5, 1181],
  [10 + SAME / 2, 1, 10, 10, 10],
  [10 - SAME / 2, 1, 10, 10, 10],
  [10 + SAME * 2, 1, 10, 11, 10],
  [10 - SAME * 2, 1, 10, 10, 9],
])('%d mm on a grid of %d', (length, grid, nearest, up, down) => {
  expect(snap(length, grid)).toBe(nearest);
  expect(gridSteps(length, grid, 'up') * grid).toBeCloseTo(up, 9);
  expect(snapDown(length, grid)).toBe(down);
});

test('nothing snaps to minus zero', () => {
  for (const way of ways) expect(Object.is(gridSteps(-1e-9, 1, way), -0)).toBe(false);
});

// 25.4 / 64 = 127 / 320 and 0.1 = 32 / 320.
test('1/64 in is 127 units and 0.1 mm is 32 units, whichever way one rounds', () => {
  expect(UNITS_PER_MM).toBe(320);
  for (const way of ways) {
    for (let n = 0; n <= 64 * 240; n += 1) expect(toUnits(inches(n / 64), way)).toBe(127 * n);
    for (let n = 0; n <= 60_000; n += 7) expect(toUnits(n / 10, way)).toBe(32 * n);
  }
});

test('an 8 ft board is 780,288 units', () => {
  expect(toUnits(feet(8), 'down')).toBe(96 * 64 * 127);
  expect(fromUnits(96 * 64 * 127)).toBe(2438.4);
});

test('sums of sixty-fourths in millimeters still land on whole units', () => {
  fc.assert(
    fc.property(fc.array(fc.integer({ min: 1, max: 6144 }), { maxLength: 30 }), counts => {
      const sum = counts.reduce((total, n) => total + inches(n / 64), 0);
      const exact = counts.reduce((total, n) => total + 127 * n, 0);
      for (const way of ways) expect(toUnits(sum, way)).toBe(exact);
    }),
  );
});

test('units come back as the length they were', () => {
  for (const units of [0, 1, 127, 32, 780_288]) expect(toUnits(fromUnits(units), 'up')).toBe(units);
});

test('up is never shorter and down never longer, and neither is off by a whole step', () => {
  const grids = fc.constantFrom(inches(1 / 16), inches(1 / 64), 1, 0.5);
  fc.assert(
    fc.property(fc.double({ min: -5000, max: 20_000, noNaN: true }), grids, (length, grid) => {
      const up = gridSteps(length, grid, 'up') * grid;
      expect(up).toBeGreaterThanOrEqual(length - 2 * SAME);
      expect(snapDown(length, grid)).toBeLessThanOrEqual(length + 2 * SAME);
      expect(up - snapDown(length, grid)).toBeLessThanOrEqual(grid + SAME);
      expect(Math.abs(snap(length, grid) - length)).toBeLessThanOrEqual(grid / 2 + SAME);
    }),
  );
});

test('binary dust is dropped', () => {
  expect(3.5 * 25.4).not.toBe(88.9);
  expect(tidy(3.5 * 25.4)).toBe(88.9);
});
