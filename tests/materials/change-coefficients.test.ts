import { describe, expect, test } from 'vitest';
import { changeCoefficient } from '../../src/materials/dimensional-change.js';
import { saturationOf } from '../../src/materials/saturation.js';
import { speciesNamed } from '../../src/materials/species.js';
import { referenceRows } from '../support/reference-rows.js';

type Pair = {
  readonly wood: string;
  readonly direction: 'radial' | 'tangential';
  readonly shrinks: number;
  readonly saturation: number;
  readonly coefficient: number;
  readonly source: string;
};

const pair = (
  source: string,
  saturation: number,
  [wood, direction, shrinks, coefficient]: readonly [string, Pair['direction'], number, number],
): Pair => ({ wood, direction, shrinks, saturation, coefficient, source });

/** Both columns were seen in copies of the Wood Handbook. */
const SEEN = (
  [
    ['red alder', 'radial', 4.4, 0.00151],
    ['red alder', 'tangential', 7.3, 0.00256],
    ['American chestnut', 'tangential', 6.7, 0.00234],
    ['American beech', 'tangential', 11.9, 0.00431],
    ['overcup oak', 'tangential', 12.7, 0.00462],
    ['black walnut', 'tangential', 7.8, 0.00274],
  ] as const
).map(row => pair('Wood Handbook Tables 4-3 and 13-5', 30, row));

/** One column or both are remembered; that they agree with each other is what is checked. */
const REMEMBERED = (
  [
    ['Alaska yellow-cedar', 'radial', 2.8, 0.00095],
    ['Alaska yellow-cedar', 'tangential', 6.0, 0.00208],
    ['Port-Orford-cedar', 'radial', 4.6, 0.00158],
    ['Port-Orford-cedar', 'tangential', 6.9, 0.00241],
    ['baldcypress', 'radial', 3.8, 0.0013],
    ['baldcypress', 'tangential', 6.2, 0.00216],
    ['Douglas-fir, coast', 'radial', 4.8, 0.00165],
    ['Douglas-fir, coast', 'tangential', 7.6, 0.00267],
    ['western larch', 'radial', 4.5, 0.00155],
    ['western larch', 'tangential', 9.1, 0.00323],
    ['loblolly pine', 'radial', 4.8, 0.00165],
    ['loblolly pine', 'tangential', 7.4, 0.00259],
    ['longleaf pine', 'radial', 5.1, 0.00176],
    ['longleaf pine', 'tangential', 7.5, 0.00263],
    ['slash pine', 'radial', 5.4, 0.00187],
    ['slash pine', 'tangential', 7.6, 0.00267],
    ['ponderosa pine', 'radial', 3.9, 0.00133],
    ['ponderosa pine', 'tangential', 6.2, 0.00216],
    ['Sitka spruce', 'radial', 4.3, 0.00148],
    ['Sitka spruce', 'tangential', 7.5, 0.00263],
    ['black locust', 'radial', 4.6, 0.00158],
    ['black locust', 'tangential', 7.2, 0.00252],
    ['white fir', 'tangential', 7.0, 0.00245],
  ] as const
).map(row => pair('Wood Handbook Tables 4-3 and 13-5, partly from memory', 30, row));

/** These three stop swelling at 22 %. */
const EARLY = (
  [
    ['western redcedar', 'radial', 2.4, 0.00111],
    ['western redcedar', 'tangential', 5.0, 0.00234],
    ['northern white-cedar', 'radial', 2.2, 0.00101],
    ['northern white-cedar', 'tangential', 4.9, 0.00229],
    ['redwood, old-growth', 'radial', 2.6, 0.0012],
    ['redwood, old-growth', 'tangential', 4.4, 0.00205],
    ['redwood, young-growth', 'radial', 2.2, 0.00101],
    ['redwood, young-growth', 'tangential', 4.9, 0.00229],
  ] as const
).map(row => pair('Wood Handbook Tables 4-3 and 13-5, partly from memory', 22, row));

const PAIRS = [...SEEN, ...REMEMBERED, ...EARLY];

describe('change coefficients follow from shrinkage', () => {
  test.each(referenceRows(({ source }: Pair) => source, PAIRS))(
    '$wood $direction: $shrinks % shrinkage gives $coefficient',
    ({ shrinks, saturation, coefficient }) => {
      expect(Number(changeCoefficient(shrinks, saturation).toFixed(5))).toBe(coefficient);
    },
  );
});

type Printed = readonly [id: string, 'changeTangential' | 'changeRadial', number, string];

/** Coefficient per 1 %, as the publication prints it for the wood or its group. */
const PRINTED: readonly Printed[] = [
  ['white-oak', 'changeTangential', 0.00365, 'Wood Handbook Table 13-5'],
  ['white-oak', 'changeRadial', 0.0018, 'Wood Handbook Table 13-5'],
  ['black-locust', 'changeTangential', 0.00252, 'Wood Handbook Table 13-5'],
  ['black-locust', 'changeRadial', 0.00158, 'Wood Handbook Table 13-5'],
  ['redwood', 'changeTangential', 0.00229, 'Wood Handbook Table 13-5, from memory'],
  ['redwood', 'changeRadial', 0.00101, 'Wood Handbook Table 13-5, from memory'],
  ['western-redcedar', 'changeTangential', 0.00234, 'Wood Handbook Table 13-5, from memory'],
  ['western-redcedar', 'changeRadial', 0.00111, 'Wood Handbook Table 13-5, from memory'],
  ['northern-white-cedar', 'changeTangential', 0.00229, 'Wood Handbook Table 13-5, from memory'],
  ['northern-white-cedar', 'changeRadial', 0.00101, 'Wood Handbook Table 13-5, from memory'],
  ['alaska-yellow-cedar', 'changeTangential', 0.00208, 'Wood Handbook Table 13-5, from memory'],
  ['alaska-yellow-cedar', 'changeRadial', 0.00095, 'Wood Handbook Table 13-5, from memory'],
  ['baldcypress', 'changeTangential', 0.00216, 'Wood Handbook Table 13-5, from memory'],
  ['baldcypress', 'changeRadial', 0.0013, 'Wood Handbook Table 13-5, from memory'],
  ['douglas-fir', 'changeRadial', 0.00165, 'Wood Handbook Table 13-5, from memory'],
  ['western-larch', 'changeTangential', 0.00323, 'Wood Handbook Table 13-5, from memory'],
  ['western-larch', 'changeRadial', 0.00155, 'Wood Handbook Table 13-5, from memory'],
  ['southern-pine', 'changeRadial', 0.00176, 'Wood Handbook Table 13-5, from memory'],
  ['spruce-pine-fir', 'changeTangential', 0.00274, 'Wood Handbook Table 13-5, from memory'],
  ['spruce-pine-fir', 'changeRadial', 0.0013, 'Wood Handbook Table 13-5, from memory'],
  ['ponderosa-pine', 'changeTangential', 0.00216, 'Wood Handbook Table 13-5, from memory'],
  ['ponderosa-pine', 'changeRadial', 0.00133, 'Wood Handbook Table 13-5, from memory'],
  ['teak', 'changeRadial', 0.00101, 'Wood Handbook Table 13-5, from memory'],
  ['douglas-fir', 'changeTangential', 0.00267, 'NWFA dimensional change coefficients'],
  ['southern-pine', 'changeTangential', 0.00265, 'NWFA dimensional change coefficients'],
  ['teak', 'changeTangential', 0.00186, 'NWFA dimensional change coefficients'],
  ['european-larch', 'changeTangential', 0.003, 'Frey-Amon data sheet'],
  ['european-larch', 'changeRadial', 0.0014, 'Frey-Amon data sheet'],
];

describe('woods carry the printed coefficients', () => {
  test.each(referenceRows(([, , , source]: Printed) => source, PRINTED))(
    '%s %s is %f (%s)',
    (id, field, printed, source) => {
      const found = speciesNamed(id)?.[field];
      expect(found?.value).toBe(printed);
      expect(found?.source.standing).toBe(source.endsWith('memory') ? 'memory' : 'checked');
    },
  );

  // Betterwood: 0.25 to 0.36 % and 0.15 to 0.19 % per 1 % for Scots pine.
  test.each(
    referenceRows('Betterwood lexicon', [
      ['changeTangential', 0.0025, 0.0036],
      ['changeRadial', 0.0015, 0.0019],
    ] as const),
  )('Scots pine %s lies within the printed %f to %f', (field, least, most) => {
    const value = speciesNamed('scots-pine')?.[field].value ?? Number.NaN;
    expect(value).toBeGreaterThanOrEqual(least);
    expect(value).toBeLessThanOrEqual(most);
  });

  // The form with each wood's own saturation: ipe, iroko, spruce and chestnut have no printed coefficient.
  test.each([
    ['ipe', 10.1, 7.4],
    ['iroko', 5.4, 3.5],
    ['norway-spruce', 7.8, 3.6],
    ['sweet-chestnut', 6.5, 3.8],
  ])('%s follows from %f and %f percent shrinkage', (id, tangential, radial) => {
    const wood = speciesNamed(id);
    if (wood === undefined) throw new Error(id);
    const { value: saturation } = saturationOf(wood);
    const byHand = (shrinks: number) =>
      Number((1 / ((100 * saturation) / shrinks - (saturation - 10))).toFixed(5));
    expect(wood.changeTangential.value).toBe(byHand(tangential));
    expect(wood.changeRadial.value).toBe(byHand(radial));
  });
});
