import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import { amountOf, spendMore, type Wish } from '../../../src/solve/cutting-spend/spend-more.js';
import { smallProblem } from '../cutting/small-problems.js';

const ends = { trimStart: 0, trimEnd: 0 };

/** Pairs of 46 from boards of 96 at 748 or of 120 at 998, no blade. */
const PAIR = {
  kerf: 0,
  pieces: [{ id: 'A', length: 46, count: 2 }],
  stock: [
    { id: '8', length: 96, cost: 748, ...ends },
    { id: '10', length: 120, cost: 998, ...ends },
  ],
};

describe('a little more money', () => {
  // Source: sums on paper. 96 - 92 = 4 is left for 7.48, 120 - 92 = 28 for 9.98: 2.50 more.
  it('buys a longer offcut where there is enough of it', () => {
    const cheapest = planCutting(PAIR);
    expect([cheapest.cost, amountOf('offcut', PAIR, cheapest)]).toEqual([748, 4]);
    const dearer = spendMore(PAIR, cheapest, { wish: 'offcut', most: 250, effort: 1 });
    expect(dearer?.cost).toBe(998);
    expect(dearer?.boards).toEqual([{ stock: '10', cuts: ['A', 'A'], offcut: 28 }]);
    expect(dearer?.proof).toEqual({ kind: 'none', gap: 250 });
    expect(spendMore(PAIR, cheapest, { wish: 'offcut', most: 249, effort: 1 })).toBeUndefined();
  });

  // Source: sums on paper. Six of 40 from boards of 60 at 300 are six boards for 18.00; from 120 at 650 three to a
  // board are two boards for 13.00; at 950 two boards are 19.00, a dollar more.
  it('buys fewer boards', () => {
    const problem = {
      kerf: 0,
      pieces: [{ id: 'A', length: 40, count: 6 }],
      stock: [
        { id: 'short', length: 60, cost: 300, ...ends },
        { id: 'long', length: 120, cost: 950, ...ends },
      ],
    };
    const cheapest = planCutting(problem);
    expect([cheapest.cost, cheapest.boards.length]).toEqual([1800, 6]);
    const dearer = spendMore(problem, cheapest, { wish: 'boards', most: 100, effort: 1 });
    expect([dearer?.cost, dearer?.boards.length]).toEqual([1900, 2]);
  });

  it('never costs more than was allowed, always brings more, and always adds up', () => {
    const wish = fc.constantFrom<Wish>('boards', 'settings', 'offcut');
    fc.assert(
      fc.property(smallProblem, wish, fc.nat(500), (problem, wanted, most) => {
        const cheapest = planCutting(problem);
        const dearer = spendMore(problem, cheapest, { wish: wanted, most, effort: 0.2 });
        if (dearer === undefined) return;
        expect(checkPlan(problem, dearer)).toEqual([]);
        expect(dearer.cost).toBeLessThanOrEqual(cheapest.cost + most);
        expect(amountOf(wanted, problem, dearer)).toBeGreaterThan(
          amountOf(wanted, problem, cheapest),
        );
      }),
      { numRuns: 100, seed: 9 },
    );
  });
});
