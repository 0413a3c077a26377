import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { screwDistances, screwPlaces } from '../../src/materials/screw-spacing.js';
import { inches, toInches } from '../../src/measure/inch.js';

describe('distances', () => {
  // NDS commentary Table C12.1.5.7 in diameters, times 0.164 and 0.190 in by hand.
  test.each([
    [8, true, 'edge', 0.41],
    [8, true, 'endPulled', 1.64],
    [8, true, 'endPushed', 0.82],
    [8, true, 'inRowAlong', 1.64],
    [10, true, 'edge', 0.475],
    [10, true, 'endPulled', 1.9],
    [10, true, 'inRowAcross', 0.95],
    [10, true, 'betweenRows', 0.57],
    [10, false, 'endPulled', 2.85],
    [10, false, 'endPushed', 1.9],
    [10, false, 'inRowAcross', 1.9],
  ] as const)('No. %i bored first %s: %s %f in', (gauge, bored, rule, expected) => {
    expect(toInches(screwDistances(gauge, bored)[rule].value)).toBeCloseTo(expected, 9);
  });
});

describe('placing screws', () => {
  test('two screws at the end of a 3-1/2 in slat on a 1-1/2 in rail', () => {
    // From the end 0.82 in (5 diameters), from the far border 0.41 in: the middle of 0.82 to 1.09 in
    // is 0.955 in. Across: quarter points of 3-1/2 in.
    const found = screwPlaces({ length: inches(1.5), width: inches(3.5) }, 2, 8);
    expect(found.kind).toBe('places');
    const places = found.kind === 'places' ? found.places : [];
    expect(places.map(({ along }) => Number(toInches(along).toFixed(3)))).toEqual([0.955, 0.955]);
    expect(places.map(({ across }) => Number(toInches(across).toFixed(3)))).toEqual([0.875, 2.625]);
  });

  test('two screws across the middle of a slat stand in the middle of the rail', () => {
    const contact = { length: inches(1.5), width: inches(3.5), ends: 'none' } as const;
    const found = screwPlaces(contact, 2, 8);
    const places = found.kind === 'places' ? found.places : [];
    expect(places.map(({ along }) => toInches(along))).toEqual([0.75, 0.75]);
  });

  test('two No. 10 where only one fits across go one behind the other', () => {
    // 1-1/2 in wide less 2 x 0.475 in leaves 0.55 in, less than 0.95 in apart; along: from 0.95 in
    // to 3.5 - 0.475 = 3.025 in, 2.075 in apart, over the 1.9 in of 10 diameters.
    const found = screwPlaces({ length: inches(3.5), width: inches(1.5) }, 2, 10);
    const places = found.kind === 'places' ? found.places : [];
    expect(places.map(({ along }) => Number(toInches(along).toFixed(3)))).toEqual([0.95, 3.025]);
    expect(places.map(({ across }) => toInches(across))).toEqual([0.75, 0.75]);
  });

  test('what does not fit is said with the numbers', () => {
    const found = screwPlaces({ length: inches(1.5), width: inches(1.5) }, 3, 10);
    expect(found).toMatchObject({ kind: 'no-room', fits: 1 });
    expect(found.kind === 'no-room' ? found.because : '').toMatch(
      /3 No\. 10 .*1-1\/2 in by 1-1\/2 in/,
    );
  });

  test('a contact narrower than two edges takes none', () => {
    const found = screwPlaces({ length: inches(3), width: inches(0.75) }, 1, 10);
    expect(found).toMatchObject({ kind: 'no-room', fits: 0 });
  });

  test('every placed screw keeps its distances', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 12, max: 160 }),
        fc.integer({ min: 12, max: 160 }),
        fc.integer({ min: 1, max: 6 }),
        fc.constantFrom('none', 'one', 'both'),
        fc.constantFrom(8, 10),
        (length16, width16, count, ends, gauge) => {
          const contact = {
            length: inches(length16 / 16),
            width: inches(width16 / 16),
            ends,
          } as const;
          const found = screwPlaces(contact, count, gauge);
          if (found.kind === 'no-room') return found.fits < count;
          const d = inches(0.06 + 0.013 * gauge);
          const inside = found.places.every(
            ({ along, across }) =>
              along >= (ends === 'none' ? 2.5 : 5) * d - 1e-6 &&
              contact.length - along >= (ends === 'both' ? 5 : 2.5) * d - 1e-6 &&
              across >= 2.5 * d - 1e-6 &&
              contact.width - across >= 2.5 * d - 1e-6,
          );
          const apart = found.places.every((a, i) =>
            found.places.slice(i + 1).every(b => {
              const along = Math.abs(a.along - b.along);
              const across = Math.abs(a.across - b.across);
              return along < 1e-6 ? across >= 5 * d - 1e-6 : along >= 10 * d - 1e-6;
            }),
          );
          return inside && apart && found.places.length === count;
        },
      ),
    );
  });
});
