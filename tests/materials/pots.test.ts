import { describe, expect, test } from 'vitest';
import { coneSpace } from '../../src/materials/pot.js';
import { narrowestInside, POTS, potFit, potNamed, riser } from '../../src/materials/pots.js';
import { NURSERY_CLASSES, NURSERY_POTS } from '../../src/materials/pots-nursery.js';
import { inches, toInches } from '../../src/measure/inch.js';
import { toGallons } from '../../src/measure/volume.js';
import { referenceRows } from '../support/reference-rows.js';

const CUBIC_INCH = inches(1) ** 3;
/** Classes whose range was not at hand. */
const REMEMBERED: readonly string[] = ['#7', '#10', '#15'];

describe('a box round a pot', () => {
  // Field case F40: a 5 in pot, four sides of 6 in from 3/4 in board.
  test.each(
    referenceRows('field case F40', [
      ['pinwheel', 5.25, 'look again', 1 / 8],
      ['between', 4.5, 'does not fit', -1 / 4],
    ] as const),
  )(
    'F40: with %s corners the inside is %d in and the pot %s',
    (corner, inside, verdict, clearance) => {
      const found = narrowestInside(inches(6), inches(3 / 4), corner);
      expect(toInches(found)).toBeCloseTo(inside, 9);
      const fit = potFit(found, inches(5));
      expect(fit.verdict).toBe(verdict);
      expect(toInches(fit.clearance)).toBeCloseTo(clearance, 9);
    },
  );

  // Common practice: 1/2 to 1 in of air.
  test('half an inch of air a side is enough', () => {
    expect(potFit(inches(6), inches(5)).verdict).toBe('fits');
  });

  // Field case F40: 1x8 is 7-1/4 in, bottom 3/4 in, pot 5 in: riser 1-1/2 in flush, 1 in for 1/2 in reveal.
  test.each(
    referenceRows('field case F40', [
      [0, 1.5],
      [0.5, 1],
    ] as const),
  )('F40: a reveal of %d in wants a riser of %d in', (reveal, told) => {
    expect(toInches(riser(inches(7.25 - 0.75), inches(5), inches(reveal)))).toBeCloseTo(told, 9);
  });
});

describe('sizes of pots', () => {
  test.each(
    referenceRows(([, , , source]) => source, [
      ['#3', 'top', 11, 'nursery container diameters (Planeta Garden)'],
      ['#5', 'top', 10.75, 'nursery container diameters (Planeta Garden)'],
      ['#7', 'top', 14, 'nursery container diameters (Planeta Garden)'],
      ['#7', 'height', 11.5, 'nursery container size chart'],
      ['#10', 'top', 15.75, 'nursery container size chart'],
      ['#10', 'height', 15, 'nursery container size chart'],
      ['#15', 'top', 17.75, 'nursery container diameters (Planeta Garden)'],
      ['clay-6', 'top', 6.25, 'garden column with measured clay pots'],
      ['clay-6', 'height', 5.5, 'garden column with measured clay pots'],
      ['clay-6-rose', 'height', 7.5, 'garden column with measured clay pots'],
      ['clay-6-pan', 'height', 4.25, 'garden column with measured clay pots'],
    ] as const),
  )('%s has a %s of %d in', (id, side, size, _source) => {
    const found = potNamed(id)?.[side];
    expect(toInches(found?.value ?? 0)).toBeCloseTo(size, 9);
    expect(found?.source.standing).toBe('checked');
  });

  // ANSI Z60.1 ranges in cubic inches against the tapered pot (pi h/12)(D² + Dd + d²), to the brim; 2 %
  // over the range is soil that nobody fills in.
  test.each(
    referenceRows(
      ([id]) => `ANSI Z60.1 container classes${REMEMBERED.includes(id) ? ', from memory' : ''}`,
      [
        ['#1', 152, 251],
        ['#2', 320, 474],
        ['#3', 628, 742],
        ['#5', 785, 1242],
        ['#7', 1337, 1790],
        ['#10', 2080, 2646],
        ['#15', 2768, 3696],
      ] as const,
    ),
  )('a %s of these sizes holds %d to %d cubic inches', (id, least, most) => {
    const pot = NURSERY_POTS.find(row => row.id === id);
    if (pot?.bottom === undefined) throw new Error(`no sizes of ${id}`);
    const holds = coneSpace(pot.top.value, pot.bottom.value, pot.height.value) / CUBIC_INCH;
    expect(holds).toBeGreaterThan(least);
    expect(holds).toBeLessThan(most * 1.02);
    const range = NURSERY_CLASSES.find(row => row.id === id)?.range.value;
    expect((range?.least ?? 0) / CUBIC_INCH).toBeCloseTo(least, 6);
    expect((range?.most ?? 0) / CUBIC_INCH).toBeCloseTo(most, 6);
  });

  // Planeta Garden prints the #5 range as 12.86 to 20.35 l, the same as 785 to 1242 cubic inches.
  test('class #5 is 12.86 to 20.35 l', () => {
    const range = NURSERY_CLASSES.find(row => row.id === '#5')?.range.value;
    expect((range?.least ?? 0) / 1e6).toBeCloseTo(12.86, 2);
    expect((range?.most ?? 0) / 1e6).toBeCloseTo(20.35, 2);
  });

  // The list prints each volume in liters and in US gallons (3.785 l), to a tenth.
  test.each(
    referenceRows('nursery list of true volumes (Bookcliff Gardens)', [
      ['#1', 2.8, 0.74],
      ['#2', 6, 1.6],
      ['#3', 9, 2.4],
      ['#5', 14.9, 3.9],
      ['#7', 24.6, 6.5],
      ['#10', 34.1, 9],
      ['#15', 54.9, 14.5],
      ['#20', 74.2, 19.6],
      ['#25', 104.5, 27.6],
    ] as const),
  )('one grower declares %s as %d l, %d gal', (id, liters, gal) => {
    const holds = NURSERY_CLASSES.find(row => row.id === id)?.holds?.value ?? 0;
    expect(holds / 1000).toBeCloseTo(liters, 9);
    expect(Math.abs(toGallons(holds) - gal)).toBeLessThan(0.06);
  });

  // A cylinder of 12 in: pi x 6² x 12 = 1357.17.
  test('a pot without taper is a cylinder', () => {
    const side = inches(12);
    expect(coneSpace(side, side, side) / CUBIC_INCH).toBeCloseTo(1357.17, 2);
  });

  test('each pot has its own name, and is no wider below than above', () => {
    expect(new Set(POTS.map(({ id }) => id)).size).toBe(POTS.length);
    for (const { top, bottom, height } of POTS) {
      expect(height.value).toBeGreaterThan(0);
      expect(bottom?.value ?? top.value).toBeLessThanOrEqual(top.value);
    }
  });
});
