import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chooseScrew, type ScrewChoice } from '../../src/materials/choose-screw.js';
import { metricScrew } from '../../src/materials/metric-screw.js';
import { lengthCap, USUAL_COVER } from '../../src/materials/screw-bite.js';
import { stockLengths } from '../../src/materials/screw-lengths.js';
import { screwName } from '../../src/materials/screw-words.js';
import { speciesNamed } from '../../src/materials/species.js';
import { MILLIMETERS } from '../../src/measure/displays.js';
import { inches, toInches } from '../../src/measure/inch.js';

function wood(id = 'redwood') {
  const species = speciesNamed(id);
  if (species === undefined) throw new Error(`${id} is missing`);
  return species;
}

type Grain = 'side' | 'end';

function choose(through: number, into: number, grain: Grain = 'side', species = 'redwood') {
  return chooseScrew({ through: inches(through), into: inches(into), grain, wood: wood(species) });
}

function chosen(through: number, into: number, grain: Grain = 'side'): ScrewChoice {
  const choice = choose(through, into, grain);
  if (choice.kind === 'no-screw') throw new Error(choice.because);
  return choice;
}

describe('choosing a screw', () => {
  test('a 1-3/4 in tongue on the end of a post takes a No. 10 x 3-1/2 in', () => {
    // Two-thirds of 1-3/4 in and 1/2 in for end grain is 1.667 in; 1.75 + 1.9 = 3.65 in is aimed at,
    // and of the lengths sold 3-1/2 in is nearest.
    const choice = chosen(1.75, 20, 'end');
    expect(screwName(choice)).toBe('No. 10 x 3-1/2 in');
    expect(toInches(choice.bite)).toBeCloseTo(1.75, 9);
    expect(choice).toMatchObject({ endGrain: true, short: false });
    expect(choice.notes.join(' ')).toMatch(/end grain/);
  });

  test('a plain butt through 3-1/2 in into end grain has no screw long enough', () => {
    // 3.5 + 10 x 0.190 (two-thirds of 3.5 is more than that helps) + 0.5 = 5.9 in; a No. 10 ends at 5 in.
    const none = choose(3.5, 20, 'end');
    expect(none).toMatchObject({ kind: 'no-screw', why: 'not-sold-that-long', gauge: 10 });
    expect(none.kind === 'no-screw' ? toInches(none.needed) : 0).toBeCloseTo(5.9, 6);
    expect(none.kind === 'no-screw' ? none.suggestion : '').toMatch(/[Nn]otch/);
  });

  test('a 3/4 in slat flat on 1-1/2 in takes a No. 8, at most 2 in', () => {
    // 0.75 + 1.5 - 0.25 = 2 in stays 1/4 in inside.
    const choice = chosen(0.75, 1.5);
    expect(choice.gauge).toBe(8);
    expect(toInches(choice.length)).toBeCloseTo(2, 9);
  });

  test('F15: two 2x4s face to face take 2-1/2 or 2-3/4 in, and 4-1/2 in is over the cap', () => {
    // Field case F15: the stack is 3 in; 3 in less 1/4 in is the cap, and 1-1/4 in of bite is what
    // 2-3/4 in gives.
    const choice = chosen(1.5, 1.5);
    expect(screwName(choice)).toBe('No. 10 x 2-3/4 in');
    expect(toInches(choice.bite)).toBeCloseTo(1.25, 9);
    const cap = lengthCap({ through: inches(1.5), into: inches(1.5) }, USUAL_COVER);
    expect(toInches(cap)).toBeCloseTo(2.75, 9);
    expect(inches(4.5)).toBeGreaterThan(cap);
  });

  test('F15: 1-1/2 in on a 3-1/2 in post takes 3 to 4 in', () => {
    const length = toInches(chosen(1.5, 3.5).length);
    expect(length).toBeGreaterThanOrEqual(3);
    expect(length).toBeLessThanOrEqual(4);
  });

  test('F16: a 2x seat board on a deep member is held by 1-1/2 in of bite or more', () => {
    // Field case F16: 1 in crept out after five years; at least 1-1/2 in, with a clearance hole above.
    const choice = chosen(1.5, 3.5);
    expect(toInches(choice.bite)).toBeGreaterThanOrEqual(1.5);
    expect(choice.holes.clearance.value).toBeGreaterThan(choice.holes.pilot.value);
  });

  // By hand from the rules: 3/4 + 3/4 has 1-3/8 in of room for the 1-3/4 in that a No. 8 needs;
  // 1 + 1 has 1-7/8 in for 2 in.
  test.each([
    [0.75, 0.75],
    [1, 1],
  ])('%f in on %f in is refused because the point would come through', (through, into) => {
    expect(choose(through, into)).toMatchObject({ kind: 'no-screw', why: 'comes-through' });
  });

  test('a lighter screw is taken where a No. 10 cannot bite, and says so', () => {
    // 1.5 + 1.14 = 2.64 in for a No. 10; 1.5 + 1.25 - 0.25 = 2.5 in, which is 1.5 + 1 for a No. 8.
    const choice = chosen(1.5, 1.25);
    expect(screwName(choice)).toBe('No. 8 x 2-1/2 in');
    expect(choice.notes.join(' ')).toMatch(/instead of a No\. 10/);
  });

  test('a short bite is taken before none, and flagged', () => {
    // Side grain through 3-1/2 in: 3.5 + 1.9 = 5.4 in is wanted, 5 in is sold: 1-1/2 in of bite,
    // over the 1.14 in of 6 diameters.
    const choice = chosen(3.5, 20);
    expect(screwName(choice)).toBe('No. 10 x 5 in');
    expect(choice.short).toBe(true);
    expect(choice.notes.join(' ')).toMatch(/short/);
  });

  test('1/8 in of cover is used where 1/4 in leaves no length, and says so', () => {
    // 1 + 1.125: less 1/4 in is 1-7/8 in, too little for 2 in; less 1/8 in is exactly 2 in.
    const choice = chosen(1, 1.125);
    expect(screwName(choice)).toBe('No. 8 x 2 in');
    expect(toInches(choice.cover)).toBeCloseTo(0.125, 9);
    expect(choice.notes.join(' ')).toMatch(/scrap/);
  });

  test('a gauge that is asked for is kept', () => {
    const joint = { through: inches(1.5), into: inches(3.5), grain: 'side', wood: wood() } as const;
    const choice = chooseScrew({ ...joint, gauge: 12 });
    expect(choice).toMatchObject({ kind: 'screw', gauge: 12 });
  });

  test('dense wood brings the advice on wax and a steel screw first', () => {
    const choice = choose(1.5, 3.5, 'side', 'white-oak');
    expect(choice.kind === 'screw' ? choice.notes.join(' ') : '').toMatch(/wax/);
  });

  test('the reason is told in the units of the builder', () => {
    const joint = { through: 45, into: 95, grain: 'side', wood: wood('scots-pine') } as const;
    expect(chooseScrew(joint, MILLIMETERS).because).toMatch(/^45 mm under the head/);
    expect(chooseScrew(joint).because).toMatch(/in under the head/);
  });

  test('any chosen screw is sold, bites 6 diameters, and stays 1/8 in inside', () => {
    const sixteenths = (from: number, to: number) =>
      fc.integer({ min: from * 16, max: to * 16 }).map(n => inches(n / 16));
    fc.assert(
      fc.property(
        sixteenths(0.25, 4),
        sixteenths(0.25, 12),
        fc.constantFrom<Grain>('side', 'end'),
        (through, into, grain) => {
          const choice = chooseScrew({ through, into, grain, wood: wood() });
          if (choice.kind === 'no-screw') return choice.because.length > 0;
          const diameter = inches(0.06 + 0.013 * choice.gauge);
          const least = 6 * diameter + (grain === 'end' ? inches(0.5) : 0);
          return (
            stockLengths(choice.gauge).includes(choice.length) &&
            choice.length - through >= least - 1e-6 &&
            through + into - choice.length >= inches(1 / 8) - 1e-6
          );
        },
      ),
    );
  });
});

describe('the metric screw beside an inch one', () => {
  // Outer diameters of EN 14592 sizes against the gauge formula: No. 8 is 4.17 mm, No. 10 4.83 mm;
  // 2 in is 50.8 mm, 2-3/4 in 69.9 mm, 3-1/2 in 88.9 mm.
  test.each([
    [0.75, 1.5, 'side', '4.0 x 50 mm'],
    [1.5, 1.5, 'side', '5.0 x 70 mm'],
    [1.5, 3.5, 'side', '5.0 x 90 mm'],
    [1.75, 20, 'end', '5.0 x 90 mm'],
  ] as const)('%f in on %f in, %s grain: %s', (through, into, grain, name) => {
    const choice = chosen(through, into, grain);
    expect(metricScrew(choice)?.name).toBe(name);
  });

  test('it stays inside the wood as well', () => {
    for (const into of [1.5, 1.75, 2, 2.5, 3, 3.5]) {
      const choice = chosen(1.5, into);
      const metric = metricScrew(choice);
      expect(metric?.length ?? 0).toBeLessThanOrEqual(inches(1.5 + into - 0.125) + 1e-6);
    }
  });
});
