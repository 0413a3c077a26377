import { describe, expect, test } from 'vitest';
import { bradFor } from '../../src/materials/brads.js';
import { nearestDrill } from '../../src/materials/drill-sizes.js';
import { GAUGES, gaugeNumbered, shank } from '../../src/materials/gauges.js';
import { screwHoles } from '../../src/materials/screw-holes.js';
import { stockLengths } from '../../src/materials/screw-lengths.js';
import { speciesNamed } from '../../src/materials/species.js';
import { inches, toInches } from '../../src/measure/inch.js';

function wood(id: string) {
  const species = speciesNamed(id);
  if (species === undefined) throw new Error(`${id} is missing`);
  return species;
}

describe('screw gauges', () => {
  // Shank diameters printed in wood screw charts, inches: the even gauges of the boat-owner chart,
  // the odd ones of the distributor chart. The formula gives three decimals of both.
  test.each([
    [4, 0.112],
    [5, 0.125],
    [6, 0.138],
    [7, 0.151],
    [8, 0.164],
    [9, 0.177],
    [10, 0.19],
    [12, 0.216],
    [14, 0.242],
    [16, 0.268],
  ])('No. %i has a shank of %f in', (gauge, printed) => {
    expect(toInches(shank(gauge))).toBeCloseTo(printed, 9);
  });

  // ASME B18.6.1 limits of the No. 8 body: basic +0.004 / -0.007, printed as 0.157 to 0.168.
  test('No. 8 lies inside its published limits', () => {
    expect(toInches(shank(8))).toBeGreaterThan(0.157);
    expect(toInches(shank(8))).toBeLessThan(0.168);
  });

  // NDS Table L3 (strength) against the boring chart: two series, never the same number.
  test.each([6, 8, 10, 12, 14, 16])('the two root series of No. %i are kept apart', gauge => {
    const row = gaugeNumbered(gauge);
    expect(row?.rootForStrength?.value).toBeGreaterThan(row?.rootForBoring?.value ?? 99);
    expect(row?.rootForStrength?.source.standing).toBe('memory');
    expect(row?.rootForBoring?.source.standing).toBe('checked');
  });

  // Wood Handbook text: the root averages about two-thirds of the shank; the boring chart is held to
  // 0.66 to 0.70.
  test('the boring roots are about two-thirds of the shank', () => {
    for (const { rootForBoring, shank: body } of GAUGES) {
      if (rootForBoring === undefined) continue;
      expect(rootForBoring.value / body.value).toBeGreaterThan(0.66);
      expect(rootForBoring.value / body.value).toBeLessThan(0.7);
    }
  });

  // Distributor chart: shortest and longest length sold, inches.
  test.each([
    [6, 3 / 8, 3],
    [8, 1 / 2, 3.5],
    [10, 5 / 8, 5],
    [12, 3 / 4, 5],
    [14, 3 / 4, 6],
  ])('No. %i is sold from %f to %f in', (gauge, shortest, longest) => {
    const lengths = stockLengths(gauge).map(toInches);
    expect(lengths[0]).toBeCloseTo(shortest, 9);
    expect(lengths.at(-1)).toBeCloseTo(longest, 9);
  });

  // Common stock steps: 1/8 to 1 in, 1/4 to 3 in, 1/2 to 5 in.
  test('No. 10 lengths go by eighths, quarters and halves', () => {
    const lengths = stockLengths(10).map(toInches);
    const expected = [
      0.625, 0.75, 0.875, 1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.5, 4, 4.5, 5,
    ];
    expect(lengths).toHaveLength(expected.length);
    for (const [i, length] of lengths.entries()) expect(length).toBeCloseTo(expected[i] ?? 0, 9);
  });

  test('an unknown gauge is sold in no length', () => {
    expect(stockLengths(11)).toEqual([]);
    expect(gaugeNumbered(11)).toBeUndefined();
  });
});

describe('screw holes', () => {
  // Working softwood column of the boat-owner boring chart, and the clearance column of boatbuilding
  // plate 6B.
  test.each([
    [6, '5/64 in', '9/64 in'],
    [8, '3/32 in', '11/64 in'],
    [10, '7/64 in', '3/16 in'],
    [12, '1/8 in', '7/32 in'],
    [14, '9/64 in', '1/4 in'],
    [16, '5/32 in', '17/64 in'],
  ])('No. %i in redwood: pilot %s, clearance %s', (gauge, pilot, clearance) => {
    const holes = screwHoles(gauge, wood('redwood'));
    expect(holes?.pilot.drill).toBe(pilot);
    expect(holes?.clearance.drill).toBe(clearance);
  });

  // Hardwood column of boatbuilding plate 6B, where it is printed.
  test.each([
    [8, '7/64 in'],
    [10, '1/8 in'],
  ])('No. %i in white oak: pilot %s', (gauge, pilot) => {
    expect(screwHoles(gauge, wood('white-oak'))?.pilot.drill).toBe(pilot);
  });

  // Design text: the less dense woods take 7/8 of the root, from gravity 0.6 on the whole root.
  test('southern pine at gravity 0.55 is still bored as softwood', () => {
    expect(screwHoles(8, wood('southern-pine'))?.pilot.drill).toBe('3/32 in');
    expect(
      screwHoles(8, { ...wood('southern-pine'), gravity: wood('black-locust').gravity })?.pilot
        .drill,
    ).toBe('7/64 in');
  });

  // Field case F18: 90 % of a 0.116 in root is 0.104 in, which is a 7/64 in bit; No. 8 in ash took
  // 7/64 in, with 11/64 in clearance.
  test('F18: a hardwood No. 8 gets 7/64 in and 11/64 in', () => {
    expect(nearestDrill(inches(0.9 * 0.116)).drill).toBe('7/64 in');
    const holes = screwHoles(8, wood('white-oak'));
    expect(holes?.pilot.drill).toBe('7/64 in');
    expect(holes?.clearance.drill).toBe('11/64 in');
  });

  // Field case F20: threads show on both sides of the pilot's bit, and do not bite in the near piece. The
  // plate's 3/16 in for No. 10 lies 0.0025 in under the nominal body and within its ASME limits (-0.007 in).
  test.each([6, 8, 10, 12, 14])(
    'F20: No. %i bites the far piece and passes the near one',
    gauge => {
      const holes = screwHoles(gauge, wood('redwood'));
      expect(holes?.pilot.value).toBeLessThan(shank(gauge));
      expect(holes?.clearance.value).toBeGreaterThan(shank(gauge) - inches(0.007));
    },
  );

  // Field case F19: 4.8 mm shank and 1 mm of room is 5.8 mm; the 15/64 in drill is 5.95 mm.
  test('F19: a No. 10 through ipe gets 15/64 in of room', () => {
    const hole = screwHoles(10, wood('ipe'))?.clearance;
    expect(hole?.drill).toBe('15/64 in');
    expect(hole?.value).toBeCloseTo(5.95, 2);
  });

  // Cone of 82 degrees, by hand: (0.332 - 0.172) / (2 tan 41 deg) = 0.160 / 1.7386 = 0.092 in.
  test('a No. 8 countersink is 0.092 in deep', () => {
    const depth = screwHoles(8, wood('redwood'))?.countersink.depth.value ?? 0;
    expect(toInches(depth)).toBeCloseTo(0.092, 3);
  });

  test.each([4, 11, 18])('no holes are given for No. %i, which the charts leave out', gauge => {
    expect(screwHoles(gauge, wood('redwood'))).toBeUndefined();
  });

  // Arithmetic: 5.8 mm is 14.6 sixty-fourths; 12/64 is 3/16; 64/64 is 1.
  test.each([
    [5.8, '15/64 in'],
    [25.4 * (12 / 64), '3/16 in'],
    [25.4, '1 in'],
  ])('a hole of %f mm takes the %s drill', (diameter, drill) => {
    expect(nearestDrill(diameter).drill).toBe(drill);
  });
});

describe('brads', () => {
  // This Old House: 2.5 times the piece held; trade articles: 18 gauge runs from 5/8 to 2 in.
  // 3/4 x 2.5 = 1.875, midway between 1-3/4 and 2: the shorter. 3/8 x 2.5 = 0.94: 1 in.
  test.each([
    [0.75, 1.5, 1.75],
    [0.375, 1.5, 1],
    [0.75, 0.75, 1.25],
    [1.5, 3.5, 2],
  ])('%f in on %f in takes a %f in brad', (through, into, length) => {
    const brad = bradFor(inches(through), inches(into));
    expect(brad.kind === 'brad' ? toInches(brad.length) : brad.because).toBeCloseTo(length, 9);
  });

  test.each([
    [1.75, 3.5],
    [0.5, 0.25],
  ])('no brad holds %f in on %f in', (through, into) => {
    expect(bradFor(inches(through), inches(into)).kind).toBe('no-brad');
  });
});
