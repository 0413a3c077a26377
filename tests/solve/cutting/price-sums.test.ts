import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nextPriceSum } from '../../../src/solve/cutting/price-sums.js';

const any = { least: 0, most: Infinity };

describe('sums that prices can add up to', () => {
  it.each([
    [
      'even prices make even sums',
      601,
      [
        { cost: 598, ...any },
        { cost: 748, ...any },
      ],
      undefined,
      602,
    ],
    // 10 boards: 5980 + 150 n, so 5980, 6130, 6280, 6430 ...
    [
      'ten boards at 598 or 748 cost 6280 or 6430',
      6281,
      [
        { cost: 598, ...any },
        { cost: 748, ...any },
      ],
      10,
      6430,
    ],
    [
      'a settled number of boards is a fixed sum',
      100,
      [{ cost: 60, least: 2, most: 2 }],
      undefined,
      120,
    ],
    [
      'what is settled below the amount cannot be raised',
      121,
      [{ cost: 60, least: 2, most: 2 }],
      undefined,
      Infinity,
    ],
    // 2 x 60 settled, and one board more at 50.
    [
      'the one board left to choose has its price',
      121,
      [
        { cost: 60, least: 2, most: 2 },
        { cost: 50, ...any },
      ],
      3,
      170,
    ],
    ['an amount that is a sum stays', 120, [{ cost: 40, ...any }], undefined, 120],
  ])('%s', (_title, amount, prices, boards, sum) => {
    expect(nextPriceSum(amount, prices, boards)).toBe(sum);
  });
});

/** Every sum of so many boards, each price taken between its least and most times (at most 12). */
function everySum(
  prices: readonly { cost: number; least: number; most: number }[],
): { sum: number; boards: number }[] {
  return prices.reduce(
    (sums, { cost, least, most }) =>
      sums.flatMap(({ sum, boards }) =>
        Array.from({ length: Math.min(most, 12) - least + 1 }, (_, more) => ({
          sum: sum + cost * (least + more),
          boards: boards + least + more,
        })),
      ),
    [{ sum: 0, boards: 0 }],
  );
}

describe('sums held against every choice of boards', () => {
  const costs = fc.uniqueArray(fc.integer({ min: 0, max: 30 }), { minLength: 1, maxLength: 4 });
  const limits = fc.array(fc.tuple(fc.nat(2), fc.nat(3), fc.boolean()), {
    minLength: 4,
    maxLength: 4,
  });
  const boards = fc.option(fc.integer({ min: 0, max: 8 }), { nil: undefined });

  it('are never above the true next sum, and exactly it when there are as many boards as wanted', () => {
    fc.assert(
      fc.property(costs, limits, fc.nat(60), boards, (prices, ranges, amount, count) => {
        const asked = prices.map((cost, k) => {
          const [least = 0, more = 0, endless = true] = ranges[k] ?? [];
          return { cost, least, most: endless ? Infinity : least + more };
        });
        const next = everySum(asked)
          .filter(({ sum, boards }) => sum >= amount && (count ?? boards) === boards)
          .reduce((least, { sum }) => Math.min(least, sum), Infinity);
        const found = nextPriceSum(amount, asked, count);
        expect(found).toBeLessThanOrEqual(next);
        expect(found).toBeGreaterThanOrEqual(Math.min(amount, next));
        // Twelve boards at 5 or more pass 60, so nothing is cut short there.
        const isExact = asked.every(
          ({ cost, least, most }) => cost >= 5 && least === 0 && most > 12,
        );
        if (isExact) expect(found).toBe(next);
      }),
      { numRuns: 2000, seed: 7 },
    );
  });
});
