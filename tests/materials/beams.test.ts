import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type BeamSection,
  bendingStress,
  evenlyLoaded,
  loadedInMiddle,
  rigidityOf,
  sectionProperties,
} from '../../src/materials/beams.js';
import { poundsForce, toPoundsForce } from '../../src/measure/force.js';
import { feet, inches, toInches } from '../../src/measure/inch.js';
import { psi, toPsi } from '../../src/measure/stress.js';
import { referenceRows } from '../support/reference-rows.js';

const inchSection = (breadth: number, depth: number): BeamSection => ({
  breadth: inches(breadth),
  depth: inches(depth),
});
const CUBIC_INCH = inches(1) ** 3;

describe('sections', () => {
  test.each(
    referenceRows('section properties: engineering pages, Vademecum, NDS Supplement Table 1B', [
      // Engineering answer page: a 2x10 has I = 98.93 in4.
      [
        '2x10, I in in4',
        sectionProperties(inchSection(1.5, 9.25)).inertia / inches(1) ** 4,
        98.93,
        2,
      ],
      // Vademecum, table of planed sections: 45 x 95 has W 67.6e3 mm3 and I 3.21e6 mm4.
      ['45x95, W in cm3', sectionProperties({ breadth: 45, depth: 95 }).modulus / 1000, 67.6, 0],
      // The page drops the digits behind 3.21.
      [
        '45x95, I in cm4',
        Math.floor(sectionProperties({ breadth: 45, depth: 95 }).inertia / 1e4),
        321,
        9,
      ],
      ['33x95, W in cm3', sectionProperties({ breadth: 33, depth: 95 }).modulus / 1000, 49.6, 0],
      // Forestry Forum, beam sizing: S of 10 x 12 is 240 in3, of 8 x 14 is 261.3, of 6 x 8 is 64.
      ['10 x 12, S in in3', sectionProperties(inchSection(10, 12)).modulus / CUBIC_INCH, 240, 6],
      ['8 x 14, S in in3', sectionProperties(inchSection(8, 14)).modulus / CUBIC_INCH, 261.3, 1],
      ['6 x 8, S in in3', sectionProperties(inchSection(6, 8)).modulus / CUBIC_INCH, 64, 6],
      // NDS Supplement Table 1B prints A 5.25, S 3.063, I 5.359 for a 2x4; S 1.313, I 0.984 laid flat.
      ['2x4 on edge, S', sectionProperties(inchSection(1.5, 3.5)).modulus / CUBIC_INCH, 3.063, 3],
      [
        '2x4 on edge, I',
        sectionProperties(inchSection(1.5, 3.5)).inertia / inches(1) ** 4,
        5.359,
        3,
      ],
      ['2x4 flat, S', sectionProperties(inchSection(3.5, 1.5)).modulus / CUBIC_INCH, 1.313, 2],
      ['2x4 flat, I', sectionProperties(inchSection(3.5, 1.5)).inertia / inches(1) ** 4, 0.984, 3],
    ]),
  )('%s', (_name, value, printed, digits) => {
    expect(value).toBeCloseTo(printed, digits);
  });
});

describe('worked examples that others published', () => {
  // Forestry Forum, beam sizing: 9500 lb over 19 ft, Fb 1150 psi: M 22 562.5 ft lb, S 235.4 in3.
  test('a header under 9500 lb', () => {
    const effect = evenlyLoaded(poundsForce(9500) / feet(19), { span: feet(19), rigidity: 1 });
    expect(effect.moment / (poundsForce(1) * feet(1))).toBeCloseTo(22_562.5, 6);
    expect(effect.moment / psi(1150) / CUBIC_INCH).toBeCloseTo(235.4, 1);
  });

  // Engineering ToolBox example of a steel beam: inputs as printed, answers by hand from wL^2/8 = 18.75
  // kNm over W = 81.96e6/150 mm3, and 5 x 6 x 5000^4 / (384 x 200000 x 81.96e6).
  test('a steel beam in SI', () => {
    const rigidity = 200_000 * 81_960_000;
    const effect = evenlyLoaded(6, { span: 5000, rigidity });
    expect(effect.moment / (81_960_000 / 150)).toBeCloseTo(34.3, 1);
    expect(effect.sag).toBeCloseTo(2.98, 2);
  });

  // The same page, W12x35: 100 lb/in on 100 in, I 285 in4, E 29e6 psi, y 6.25 in: by hand
  // 125 000 x 6.25 / 285 = 2741 psi and 5 x 100 x 1e8 / (384 x 29e6 x 285) = 0.0158 in.
  test('a steel beam in inches', () => {
    const inertia = 285 * inches(1) ** 4;
    const effect = evenlyLoaded(poundsForce(100) / inches(1), {
      span: inches(100),
      rigidity: psi(29e6) * inertia,
    });
    expect(toPsi((effect.moment * inches(6.25)) / inertia)).toBeCloseTo(2741, 0);
    expect(toInches(effect.sag)).toBeCloseTo(0.0158, 4);
  });
});

/** E 1.2 million psi and the boards of the field cases. */
const CASE_E = psi(1.2e6);

describe('field cases', () => {
  // F46: a 2x4 over 10 ft weighs 1.5 lb a foot, 2 lb when soaked: 0.05, 0.07 in on edge, 0.29 flat.
  test.each(
    referenceRows('field case F46', [
      ['on edge', inchSection(1.5, 3.5), 1.5, 0.05],
      ['on edge, soaked', inchSection(1.5, 3.5), 2, 0.07],
      ['flat', inchSection(3.5, 1.5), 1.5, 0.29],
    ]),
  )('F46: an unloaded 2x4 over ten feet, %s', (_name, section, poundsAFoot, sag) => {
    const rigidity = rigidityOf(section, CASE_E);
    const effect = evenlyLoaded(poundsForce(poundsAFoot) / feet(1), { span: feet(10), rigidity });
    expect(toInches(effect.sag)).toBeCloseTo(sag, 2);
  });

  // F47: seven 2x4 over 60 in, load in the middle, 1000 psi: 1429 lb on edge (S 3.06), 612 flat;
  // under 500 lb they sag 0.05 and 0.27 in.
  test.each(
    referenceRows('field case F47', [
      ['on edge', inchSection(1.5, 3.5), 1429, 0.05],
      ['flat', inchSection(3.5, 1.5), 612, 0.27],
    ]),
  )('F47: seven 2x4 %s', (_name, section, carries, sag) => {
    const span = inches(60);
    const one = loadedInMiddle(1, { span, rigidity: rigidityOf(section, CASE_E) });
    const most = toPoundsForce((7 * psi(1000)) / bendingStress(one.moment, section));
    expect(Math.abs(most - carries)).toBeLessThan(1.5);
    expect(toInches((one.sag * poundsForce(500)) / 7)).toBeCloseTo(sag, 2);
  });

  // F48: two flat 2x6, 400 lb in the middle.
  test.each(
    referenceRows('field case F48', [
      [60, 0.48, 124, 1455],
      [48, 0.25, 193, 1164],
      [36, 0.1, 344, 873],
    ]),
  )('F48: a picnic seat over %i in sags %d in, L/%i, at %i psi', (span, sag, ratio, stress) => {
    const section = inchSection(5.5, 1.5);
    const rigidity = rigidityOf(section, CASE_E);
    const effect = loadedInMiddle(poundsForce(200), { span: inches(span), rigidity });
    expect(toInches(effect.sag)).toBeCloseTo(sag, 2);
    expect(Math.abs(inches(span) / effect.sag - ratio)).toBeLessThan(1);
    expect(toPsi(bendingStress(effect.moment, section))).toBeCloseTo(stress, -0.5);
  });

  // F48, closing remark: two flat 2x4 sag 5.5 / 3.5 = 1.57 times as much.
  test('F48: flat 2x4 sag 1.57 times as much as flat 2x6', () => {
    const sag = (breadth: number) =>
      loadedInMiddle(1, {
        span: inches(48),
        rigidity: rigidityOf(inchSection(breadth, 1.5), CASE_E),
      }).sag;
    expect(sag(3.5) / sag(5.5)).toBeCloseTo(1.57, 2);
  });
});

const TINY = 1e-9;

/**
 * Sag and moment of a beam on supports at 0 and L by adding up small slices, with nothing but
 * equilibrium and curvature: an independent path to the formulas.
 */
function addedUp(
  load: (x: number) => number,
  { from, to, span }: { from: number; to: number; span: number },
) {
  const n = 12_000;
  const step = (to - from) / n;
  const xs = Array.from({ length: n + 1 }, (_, i) => from + i * step);
  const weight = (i: number) => (i === 0 || i === n ? 0.5 : 1) * step;
  const total = xs.reduce((sum, x, i) => sum + load(x) * weight(i), 0);
  const about0 = xs.reduce((sum, x, i) => sum + load(x) * x * weight(i), 0);
  const right = about0 / span;
  const left = total - right;
  let shear = 0;
  let moment = 0;
  let slope = 0;
  let y = 0;
  const curve: { x: number; moment: number; y: number }[] = [];
  xs.forEach((x, i) => {
    const before = i === 0 ? x : (xs[i - 1] ?? x);
    const bent = moment + shear * (x - before);
    const turned = slope + ((moment + bent) / 2) * (x - before);
    y += ((slope + turned) / 2) * (x - before);
    moment = bent;
    slope = turned;
    if (i > 0 && before < -TINY && x >= -TINY) shear += left;
    if (i === 0 && x === 0) shear += left;
    if (before < span - TINY && x >= span - TINY) shear += right;
    shear -= load(x) * weight(i);
    curve.push({ x, moment, y });
  });
  const at = (x: number) =>
    curve.reduce((near, it) => (Math.abs(it.x - x) < Math.abs(near.x - x) ? it : near));
  const [a, b] = [at(0), at(span)];
  const tilt = (b.y - a.y) / span;
  return {
    moment: (x: number) => at(x).moment,
    sag: (x: number) => -(at(x).y - a.y - tilt * (x - a.x)),
  };
}

describe('formulas agree with adding up slices', () => {
  test('evenly loaded', () => {
    const sum = addedUp(() => 2, { from: 0, to: 4, span: 4 });
    const formula = evenlyLoaded(2, { span: 4, rigidity: 1 });
    expect(formula.moment).toBeCloseTo(sum.moment(2), 2);
    expect(formula.sag).toBeCloseTo(sum.sag(2), 2);
  });

  test.each([0.5, 1, 3])('a load in the middle spread over %d of 4', stretch => {
    const load = (x: number) => (Math.abs(x - 2) <= stretch / 2 ? 3 / stretch : 0);
    const sum = addedUp(load, { from: 0, to: 4, span: 4 });
    const formula = loadedInMiddle(3, { span: 4, rigidity: 1 }, stretch);
    expect(formula.moment).toBeCloseTo(sum.moment(2), 1);
    expect(formula.sag / sum.sag(2)).toBeCloseTo(1, 2);
  });
});

describe('formulas agree with each other', () => {
  test('a stretch as long as the span is an even load', () => {
    fc.assert(
      fc.property(fc.double({ min: 100, max: 5000, noNaN: true }), span => {
        const on = { span, rigidity: 1e9 };
        const spread = evenlyLoaded(1000 / span, on);
        const middle = loadedInMiddle(1000, on, span);
        expect(middle.moment / spread.moment).toBeCloseTo(1, 9);
        expect(middle.sag / spread.sag).toBeCloseTo(1, 9);
      }),
    );
  });
});
