import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  CLAMP_FORCE,
  clampPressure,
  clampsByPressure,
  clampsBySpacing,
  spacingFor,
} from '../../src/materials/clamps.js';
import { squareInches } from '../../src/measure/area.js';
import { poundsForce, toPoundsForce } from '../../src/measure/force.js';
import { inches, toInches } from '../../src/measure/inch.js';
import { psi, toPsi } from '../../src/measure/stress.js';
import { referenceRows } from '../support/reference-rows.js';

describe('clamps by pressure', () => {
  // Area in sq in, pressure in psi, force of one clamp in lb, total in lb, clamps.
  test.each(
    referenceRows(([, , , , , source]) => source, [
      [27, 450, 1350, 12150, 9, 'woodwork article after Rabiej: two 3/4 x 36 in edges'],
      [25, 150, 420, 3750, 9, 'woodwork magazine, clamp pressure worked example'],
      [27, 450, 1351, 12150, 9, 'sum on paper: clamps by pressure'],
      [27, 450, 1349, 12150, 10, 'sum on paper: clamps by pressure'],
    ] as const),
  )(
    '%d sq in at %d psi with clamps of %d lb: %d lb, %d clamps (%s)',
    (area, pressure, force, total, clamps, _source) => {
      expect(toPoundsForce(squareInches(area) * psi(pressure))).toBeCloseTo(total, 6);
      expect(clampsByPressure(squareInches(area), psi(pressure), poundsForce(force))).toBe(clamps);
    },
  );

  // Glue maker guide: 100 to 150, 150 to 200, 200 to 300 psi; woodwork magazine: not over 250.
  test.each([
    ['soft', 150],
    ['medium', 200],
    ['hard', 250],
  ] as const)('%s wood is pressed with %d psi', (wood, pressure) => {
    expect(toPsi(clampPressure(wood))).toBeCloseTo(pressure, 9);
  });

  // Woodwork article: one measured I-beam bar clamp, 1350 lb; magazine example: 420 lb.
  test('clamps press with what was measured', () => {
    expect(toPoundsForce(CLAMP_FORCE.bar.value)).toBeCloseTo(1350, 9);
    expect(toPoundsForce(CLAMP_FORCE.light.value)).toBeCloseTo(420, 9);
  });
});

describe('clamps by spacing', () => {
  // ceil((J - 2e)/s) + 1 by hand.
  test.each(
    referenceRows('sum on paper: clamps along a joint', [
      [48, 2, 10, 6],
      [44, 2, 10, 5],
      [45, 2, 10, 6],
      [14, 2, 10, 2],
      [3.5, 2, 10, 1],
      [4, 2, 10, 1],
    ] as const),
  )('%d in of joint, first clamp %d in, every %d in: %d', (joint, end, spacing, clamps) => {
    const row = { joint: inches(joint), end: inches(end), spacing: inches(spacing) };
    expect(clampsBySpacing(row)).toBe(clamps);
  });

  // Common practice, 45 degrees: 2 x (3.5 + 0.75) = 8.5.
  test('pressure of a 3-1/2 in board under a 3/4 in caul meets 8-1/2 in apart', () => {
    expect(toInches(spacingFor(inches(3.5), inches(0.75)))).toBeCloseTo(8.5, 9);
  });

  test('a longer joint never wants fewer clamps', () => {
    const length = fc.integer({ min: 1, max: 3000 });
    fc.assert(
      fc.property(length, length, (a, b) => {
        const clamps = (joint: number) => clampsBySpacing({ joint, end: 50, spacing: 250 });
        expect(clamps(Math.max(a, b))).toBeGreaterThanOrEqual(clamps(Math.min(a, b)));
      }),
    );
  });

  test('neighbors are never farther apart than the spacing', () => {
    fc.assert(
      fc.property(fc.integer({ min: 120, max: 3000 }), joint => {
        const clamps = clampsBySpacing({ joint, end: 50, spacing: 250 });
        expect((joint - 100) / (clamps - 1)).toBeLessThanOrEqual(250 + 1e-9);
      }),
    );
  });
});
