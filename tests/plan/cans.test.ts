import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { squareFeet } from '../../src/measure/area.js';
import { gallons, toGallons } from '../../src/measure/volume.js';
import { type CanOffer, cansFor } from '../../src/plan/cans.js';
import { referenceRows } from '../support/reference-rows.js';

const GALLON: CanOffer = { name: 'gallon', holds: gallons(1) };
const QUART: CanOffer = { name: 'quart', holds: gallons(1 / 4) };

function words(offers: readonly CanOffer[], amount: number, by: 'cost' | 'left-over'): string {
  const { cans } = cansFor(amount, offers, by);
  return cans.map(({ offer, count }) => `${count} ${offer.name}`).join(', ');
}

function priced(offer: CanOffer, price: number): CanOffer {
  return { ...offer, price };
}

describe('cans to buy', () => {
  // Field case F35: 800 sq ft at 250, 150 and 100 sq ft a gallon, in gallons.
  test.each(
    referenceRows('field case F35', [
      [250, 3.2, 4],
      [150, 5.333, 6],
      [100, 8, 8],
    ] as const),
  )('F35: 800 sq ft at %d a gallon is %d gal, %d cans', (reach, gal, count) => {
    const amount = squareFeet(800) / (squareFeet(reach) / gallons(1));
    expect(toGallons(amount)).toBeCloseTo(gal, 3);
    expect(words([GALLON], amount, 'left-over')).toBe(`${count} gallon`);
  });

  // Sums on paper. 3.52 gal: 4 gallons cost 160, 3 gallons and 3 quarts 165. 3.2 gal: 4 gallons 160, 3
  // gallons and 1 quart 135. Quarts at 9: 15 of them 135 for 3.52 gal.
  test.each(
    referenceRows('sum on paper: cans', [
      [3.52, 4000, 1500, 'cost', '4 gallon'],
      [3.52, 4000, 1500, 'left-over', '3 gallon, 3 quart'],
      [3.2, 4000, 1500, 'cost', '3 gallon, 1 quart'],
      [3.52, 4000, 900, 'cost', '15 quart'],
      [1, 4000, 1500, 'cost', '1 gallon'],
      [1, 4000, 1000, 'cost', '1 gallon'],
      [0.2, 4000, 1500, 'cost', '1 quart'],
    ] as const),
  )('%d gal with gallons at %d and quarts at %d, by %s: %s', (gal, gallon, quart, by, told) => {
    const offers = [priced(GALLON, gallon), priced(QUART, quart)];
    expect(words(offers, gallons(gal), by)).toBe(told);
  });

  test('without a price it goes by what is left over', () => {
    expect(words([GALLON, priced(QUART, 1)], gallons(3.2), 'cost')).toBe('3 gallon, 1 quart');
    expect(cansFor(gallons(1), [GALLON], 'cost').cost).toBeUndefined();
  });

  test('nothing is bought for nothing', () => {
    expect(cansFor(0, [GALLON], 'cost')).toEqual({ cans: [], leftOver: 0 });
    expect(cansFor(100, [], 'cost')).toEqual({ cans: [], leftOver: 0 });
  });

  test('no other choice of cans is better', () => {
    const size = fc.integer({ min: 1, max: 9 });
    const price = fc.integer({ min: 1, max: 30 });
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        size,
        size,
        price,
        price,
        (amount, a, b, pa, pb) => {
          const offers = [
            { name: 'a', holds: a, price: pa },
            { name: 'b', holds: b, price: pb },
          ];
          const all = Array.from(
            { length: 41 * 41 },
            (_, at) => [at % 41, Math.floor(at / 41)] as const,
          )
            .map(([na, nb]) => ({ holds: na * a + nb * b, cost: na * pa + nb * pb }))
            .filter(({ holds }) => holds >= amount);
          expect(cansFor(amount, offers, 'cost').cost).toBe(Math.min(...all.map(it => it.cost)));
          expect(cansFor(amount, offers, 'left-over').leftOver).toBeCloseTo(
            Math.min(...all.map(it => it.holds)) - amount,
            6,
          );
        },
      ),
    );
  });

  test('ten thousand liters in four sizes are still quick', () => {
    const metric = [750, 1000, 2500, 5000].map(holds => ({ name: `${holds}`, holds }));
    expect(words(metric, 1_000_000, 'left-over')).toBe('200 5000');
    expect(words(metric, 10_000_000, 'left-over')).toBe('2000 5000');
  });
});
