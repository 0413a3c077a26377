import { describe, expect, test } from 'vitest';
import { squareInches } from '../../src/measure/area.js';
import { MILLIMETERS, SIXTEENTHS } from '../../src/measure/displays.js';
import { formatFloorLoad, psf, spread, toPsf } from '../../src/measure/floor-load.js';
import { forceWeight, poundsForce, toPoundsForce, weightForce } from '../../src/measure/force.js';
import { formatStress, psi, toPsi } from '../../src/measure/stress.js';
import { parseWeight, pounds } from '../../src/measure/weight.js';

describe('force, stress and floor load', () => {
  // 2010 ADA Standards 903.6 prints 250 lbf as 1112 N.
  test('250 lbf is 1112 N', () => {
    expect(Math.round(poundsForce(250))).toBe(1112);
    expect(toPoundsForce(1112)).toBeCloseTo(250, 1);
  });

  // NIST SP 811, Appendix B.8: pound-force = 4.448222 N; psi = 6.894757 kPa; psf = 4.882428 kg/m2.
  test.each([
    ['pound-force in N', poundsForce(1), 4.448222, 6],
    ['psi in N/mm2', psi(1), 0.006894757, 9],
    ['pound on a square foot in kg/m2', psf(1), 4.882428, 6],
    ['kilogram-force in N', weightForce(1), 9.80665, 9],
  ])('%s', (_name, value, printed, digits) => {
    expect(value).toBeCloseTo(printed, digits);
  });

  test('each way and back', () => {
    expect(toPsi(psi(1150))).toBeCloseTo(1150, 9);
    expect(toPsf(psf(40))).toBeCloseTo(40, 9);
    expect(forceWeight(weightForce(110))).toBeCloseTo(110, 9);
  });

  // Field case F37: a 200 lb tub on 20 x 14 in loads its footprint at 103 lb a square foot.
  test('a tub of 200 lb on 20 x 14 in is 103 lb/sq ft', () => {
    expect(formatFloorLoad(spread(pounds(200), squareInches(280)), SIXTEENTHS)).toBe(
      '103 lb/sq ft',
    );
  });

  test.each([
    [formatStress(psi(1086.6), SIXTEENTHS), '1087 psi'],
    [formatStress(psi(1086.6), MILLIMETERS), '7.5 N/mm2'],
    [formatFloorLoad(psf(40), MILLIMETERS), '195 kg/m2'],
  ])('is written %s', (written, wanted) => {
    expect(written).toBe(wanted);
  });
});

describe('a weight as people write it', () => {
  // Exact pound of NIST SP 811: 0.45359237 kg.
  test.each([
    ['250 lb', 'metric', 113.3980925],
    ['250', 'inch', 113.3980925],
    ['250#', 'inch', 113.3980925],
    ['110', 'metric', 110],
    ['110kg', 'inch', 110],
    ['1,5 kg', 'metric', 1.5],
  ] as const)('%s (%s)', (text, system, kg) => {
    const read = parseWeight(text, system);
    expect(read.ok && read.value).toBeCloseTo(kg, 9);
  });

  test.each(['', '-5 lb', 'heavy', '1,200 lb', '12 stone', '1..2 kg'])(
    '%j is refused with an example',
    text => {
      const read = parseWeight(text, 'inch');
      expect(read.ok ? '' : read.hint).toMatch(/Write (it such as 250 lb|1200)/);
    },
  );
});
