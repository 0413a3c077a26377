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
