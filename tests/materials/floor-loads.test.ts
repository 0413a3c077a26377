import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { floorCheck, footLoads, piecesOnDeck } from '../../src/materials/floor-check.js';
import { deepestFill, SOIL_WEIGHTS, soilWeight } from '../../src/materials/soil-weights.js';
import { tipping } from '../../src/materials/tipping.js';
import { squareFeet, squareInches, squareMeters } from '../../src/measure/area.js';
import { psf, spread, toPsf } from '../../src/measure/floor-load.js';
import { weightForce } from '../../src/measure/force.js';
import { inches } from '../../src/measure/inch.js';
import { cubicFeet } from '../../src/measure/volume.js';
import { pounds, toPounds } from '../../src/measure/weight.js';
import { referenceRows } from '../support/reference-rows.js';

describe('F37: tubs of wet soil on a deck of 100 sq ft', () => {
  // Field case F37: 2 cu ft at 75 to 100 lb are 150 to 200 lb; 40 lb/sq ft on 100 sq ft are 4000 lb,
  // half kept for people leaves about 10 tubs; a tub on 20 x 14 in loads its footprint at 103 lb/sq ft.
  test('one tub presses on its own area far more than the deck is meant for', () => {
    const check = floorCheck(pounds(200), squareInches(20 * 14));
    expect(toPsf(check.spread)).toBeCloseTo(103, 0);
    expect(check.share).toBeCloseTo(103 / 40, 1);
  });

  test.each(
    referenceRows('field case F37', [
      [200, 0.5, 10],
      [150, 0.5, 13],
      [200, 0, 20],
    ] as const),
  )('tubs of %i lb, %d kept for people: %i', (each, people, count) => {
    expect(piecesOnDeck({ area: squareFeet(100), each: pounds(each), people })).toBe(count);
  });

  test('an owner who names another limit is heard', () => {
    const check = floorCheck(pounds(200), squareFeet(4), psf(60));
    expect(check.share).toBeCloseTo(50 / 60, 9);
  });
});

describe('F38: a trough on a roof terrace', () => {
  // Field case F38: soil 7 x 0.6 x 0.6 m at 1700 kg/m3 is 4284 kg: 1020 kg/m2 and 10.0 kN/m2 on its own
  // area, 744 kg/m2 and 7.3 kN/m2 on the outside 7.2 x 0.8 m; light mix at 1100: 660 and 6.5.
  const soil = (density: number) => 7 * 0.6 * 0.6 * density;
  test.each(
    referenceRows('field case F38', [
      ['soil area', soil(1700), 7 * 0.6, 1020, 10],
      ['outside', soil(1700), 7.2 * 0.8, 744, 7.3],
      ['soil area, light mix', soil(1100), 7 * 0.6, 660, 6.5],
    ] as const),
  )('over the %s', (_name, weight, area, load, kilonewtons) => {
    const on = spread(weight, squareMeters(area));
    expect(Math.round(on)).toBe(load);
    expect(weightForce(on) / 1000).toBeCloseTo(kilonewtons, 1);
  });

  // 7.5 kN/m2 are 764.8 kg/m2; over 1700 kg/m3 that is 0.45 m.
  test('under 7.5 kN/m2 only 0.45 m of that soil may stand', () => {
    expect(deepestFill(7500 / 9.80665, 1700)).toBeCloseTo(450, -0.5);
  });

  test('a length ten times out cannot hide: the load is ten times out too', () => {
    const right = spread(soil(1700), squareMeters(7.2 * 0.8));
    const wrong = spread(soil(1700), squareMeters(0.72 * 0.8));
    expect(wrong / right).toBeCloseTo(10, 9);
  });
});

describe('soil', () => {
  // Gardening and engineering pages, lb in a cubic foot, and the metric column where one is printed.
  test.each(
    referenceRows('gardening and engineering pages on soil', [
      ['potting-mix-wet', 40, 60, undefined],
      ['potting-soil-moist', 75, 85, undefined],
      ['dirt-dry', 76, 76, 1220],
      ['dirt-moist', 78, 78, 1250],
      ['loam', 80, 80, 1280],
      ['clay-wet', 110, 110, 1760],
      ['sand-wet', 119, 119, 1905],
      ['gravel-wet', 125, 125, 2000],
      ['earth-loose', 75, 75, 1200],
      ['earth-rammed', 100, 100, 1600],
      ['water', 62.4, 62.4, 1000],
    ] as const),
  )('%s: %d to %d lb a cubic foot', (soil, from, to, metric) => {
    const weight = soilWeight(cubicFeet(1), soil);
    expect(toPounds(weight.from)).toBeCloseTo(from, 9);
    expect(toPounds(weight.to)).toBeCloseTo(to, 9);
    if (metric === undefined) return;
    // The metric column is rounded to tens.
    expect(Math.abs(SOIL_WEIGHTS[soil].value.to - metric)).toBeLessThan(5);
  });

  // Field case F41: 46-1/2 x 14-1/2 x 8 in of soil at 90 lb is about 281 lb, 94 lb on each of 3 bars.
  test('F41: soil on a false bottom', () => {
    const space = inches(46.5) * inches(14.5) * inches(8);
    const weight = (space / cubicFeet(1)) * 90;
    expect(weight).toBeCloseTo(281, 0);
    const loam = soilWeight(space, 'loam').to;
    expect((toPounds(loam) * 90) / 80 / 3).toBeCloseTo(94, 0);
  });
});

describe('tipping', () => {
  // Levers by hand: 60 lb x 9 in = 540 lb in against 250 lb x 2 in = 500.
  test.each([
    [60, 9, 250, 2, 500 / 540],
    [60, 9, 250, 3, 750 / 540],
    [60, 9, 250, 0, 0],
    [60, 9, 250, -3, 0],
    [60, 0, 250, 2, Number.POSITIVE_INFINITY],
  ])('%d lb, arm %d in; %d lb, %d in outside', (weight, arm, load, overhang, share) => {
    const found = tipping({
      weight: pounds(weight),
      arm: inches(arm),
      load: pounds(load),
      overhang: inches(overhang),
    });
    expect(found.share).toBeCloseTo(share, 9);
  });

  test('what just tips it uses all of its steadiness', () => {
    const numbers = fc.double({ min: 0.1, max: 500, noNaN: true });
    fc.assert(
      fc.property(numbers, numbers, numbers, (weight, arm, overhang) => {
        const { mostLoad } = tipping({ weight, arm, load: 1, overhang });
        expect(tipping({ weight, arm, load: mostLoad, overhang }).share).toBeCloseTo(1, 9);
        const further = tipping({ weight, arm, load: 1, overhang: overhang * 2 });
        expect(further.mostLoad).toBeLessThan(mostLoad);
      }),
    );
  });
});

describe('feet', () => {
  test('four feet share evenly, or two of them carry when it rocks', () => {
    expect(footLoads(400, 4)).toEqual({ level: 100, rocking: 200 });
    expect(footLoads(400, 1)).toEqual({ level: 400, rocking: 400 });
  });
});
