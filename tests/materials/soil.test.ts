import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { drainGrid } from '../../src/materials/drainage.js';
import { falseBottom } from '../../src/materials/false-bottom.js';
import { fillWeight } from '../../src/materials/loads.js';
import { bagsFor, depthOfBags, insideOf, looseFill, spaceOf } from '../../src/materials/soil.js';
import { squareInches } from '../../src/measure/area.js';
import { feet, inches, toInches } from '../../src/measure/inch.js';
import { cubicFeet, toCubicFeet } from '../../src/measure/volume.js';
import { toPounds } from '../../src/measure/weight.js';
import { referenceRows } from '../support/reference-rows.js';

/** Field case F42: a porch planter of 8 x 2 x 1 ft, 3/4 in walls and floor, 1 in below the rim. */
const PORCH = insideOf({
  length: feet(8),
  width: feet(2),
  height: feet(1),
  wall: inches(3 / 4),
  floor: inches(3 / 4),
  belowRim: inches(1),
});

describe('soil for a planter', () => {
  test.each(
    referenceRows('field case F42', [
      ['inside length in inches', toInches(PORCH.length), 94.5, 9],
      ['inside width in inches', toInches(PORCH.width), 22.5, 9],
      ['depth of soil in inches', toInches(PORCH.depth), 10.25, 9],
      ['space in cu ft', toCubicFeet(spaceOf(PORCH)), 12.6, 1],
      ['bags of 2 cu ft with settling', looseFill(spaceOf(PORCH)) / cubicFeet(2), 7.3, 1],
      ['bags to buy', bagsFor(spaceOf(PORCH), cubicFeet(2)), 8, 9],
      ['depth that two bags give', toInches(depthOfBags(2, cubicFeet(2), PORCH)), 3.25, 1],
    ] as const),
  )('F42: %s', (_what, found, told, places) => {
    expect(found).toBeCloseTo(told, places);
  });

  // F42: about 1009 lb at 80 lb a cubic foot; planned and heavy mix weigh 65 and 85.
  test('F42: the soaked weight lies round 1009 lb', () => {
    const { planned, heavy } = fillWeight(spaceOf(PORCH), 'potting-mix');
    expect(toPounds(planned)).toBeLessThan(1009);
    expect(toPounds(heavy)).toBeGreaterThan(1009);
  });

  test('a bag too few is never bought', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e6, max: 1e9, noNaN: true }), space => {
        const bags = bagsFor(space, 50e6);
        expect(bags * 50e6).toBeGreaterThanOrEqual(looseFill(space) * (1 - 1e-9));
        expect((bags - 1) * 50e6).toBeLessThan(looseFill(space));
      }),
    );
  });
});

describe('holes in the floor', () => {
  // Worked by hand from a published pitch of 6 to 8 in: 36 x 12 in takes 6 x 2 holes; 12 x pi/16 =
  // 2.36 sq in, 0.55 % of 432.
  test('a floor of 36 x 12 in takes 6 x 2 holes, 0.55 % of it', () => {
    const grid = drainGrid(inches(36), inches(12), inches(1 / 2));
    expect([grid.along, grid.across, grid.count]).toEqual([6, 2, 12]);
    expect(grid.open / squareInches(1)).toBeCloseTo(2.36, 2);
    expect(grid.openShare * 100).toBeCloseTo(0.55, 2);
    expect(grid.alongMarks.map(toInches)).toEqual(
      [3, 9, 15, 21, 27, 33].map(n => expect.closeTo(n, 9)),
    );
    expect(grid.acrossMarks.map(toInches)).toEqual([3, 9].map(n => expect.closeTo(n, 9)));
  });

  // Field case F39: 1/2 in holes every 150 to 200 mm, at least four.
  test.each(
    referenceRows('field case F39', [
      [8, 8],
      [12, 6],
      [24, 8],
      [18, 14],
    ] as const),
  )('F39: a box of %d x %d in has four holes or more', (length, width) => {
    expect(drainGrid(inches(length), inches(width), inches(1 / 2)).count).toBeGreaterThanOrEqual(4);
  });

  test('holes are symmetrical and never farther apart than 8 in', () => {
    const side = fc.integer({ min: 150, max: 1200 });
    fc.assert(
      fc.property(side, side, (length, width) => {
        const { alongMarks, acrossMarks } = drainGrid(length, width, 12);
        for (const [marks, over] of [
          [alongMarks, length],
          [acrossMarks, width],
        ] as const) {
          expect((marks[0] ?? 0) + (marks.at(-1) ?? 0)).toBeCloseTo(over, 6);
          expect(over / marks.length).toBeLessThanOrEqual(inches(8) + 1e-6);
        }
      }),
    );
  });
});

describe('a false bottom', () => {
  // Field case F41: 17 in deep, 8 in of soil, 1 in below the rim; bars 1-1/2 in high. 46-1/2 x 14-1/2 in
  // inside: 3.1 cu ft, 281 lb at 90 lb a cubic foot, 94 lb a bar; at the 85 lb used here 88.5 lb.
  const marks = falseBottom({
    inside: { length: inches(46.5), width: inches(14.5), depth: inches(17) },
    soil: inches(8),
    belowRim: inches(1),
    bar: inches(1.5),
    bars: 3,
    fill: 'potting-mix',
  });

  test.each(
    referenceRows('field case F41', [
      ['bar tops', toInches(marks.barTop), 8],
      ['undersides', toInches(marks.barUnderside), 6.5],
      ['pounds a bar at 90 lb a cubic foot', (toPounds(marks.eachCarries) * 90) / 85, 94],
    ] as const),
  )('F41: %s', (_what, found, told) => {
    expect(Math.abs(found - told)).toBeLessThan(0.5);
  });
});
