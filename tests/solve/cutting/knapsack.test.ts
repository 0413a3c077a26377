import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Goods, Knapsack } from '../../../src/solve/cutting/knapsack.js';
import { SuffixWorth } from '../../../src/solve/cutting/suffix-worth.js';

const goods = fc
  .array(
    fc.record({
      length: fc.integer({ min: 1, max: 20 }),
      demand: fc.integer({ min: 1, max: 6 }),
      worth: fc.integer({ min: 0, max: 50 }),
    }),
    { minLength: 1, maxLength: 5 },
  )
  .map(rows => ({
    lengths: rows.map(row => row.length),
    demands: rows.map(row => row.demand),
    worth: rows.map(row => row.worth),
  }));

/** Textbook table over every unit of room, one piece at a time. */
function mostWorth({ lengths, demands, worth }: Goods, room: number): number {
  const most = new Array<number>(room + 1).fill(0);
  lengths.forEach((length, i) => {
    for (let one = 0; one < (demands[i] ?? 0); one++) {
      for (let r = room; r >= length; r--) {
        most[r] = Math.max(most[r] ?? 0, (most[r - length] ?? 0) + (worth[i] ?? 0));
      }
    }
  });
  return most[room] ?? 0;
}

const work = () => ({ done: 0, limit: Infinity });

describe('the most valuable filling', () => {
  it('agrees with a table over every unit of length, for several boards at once', () => {
    const rooms = fc.array(fc.integer({ min: 1, max: 70 }), { minLength: 1, maxLength: 4 });
    fc.assert(
      fc.property(goods, rooms, fc.integer({ min: 0, max: 120 }), (wanted, sizes, over) => {
        const targets = sizes.map(room => ({ room, over }));
        const fillings = new Knapsack().solve(wanted, targets, work());
        fillings.forEach((filling, k) => {
          const most = mostWorth(wanted, sizes[k] ?? 0);
          expect(filling?.value).toBe(most > over ? most : undefined);
          if (filling === undefined) return;
          const sum = (of: readonly number[]) =>
            filling.counts.reduce((total, count, i) => total + count * (of[i] ?? 0), 0);
          expect(sum(wanted.worth)).toBe(most);
          expect(sum(wanted.lengths)).toBeLessThanOrEqual(sizes[k] ?? 0);
          expect(filling.counts.every((count, i) => count <= (wanted.demands[i] ?? 0))).toBe(true);
        });
      }),
      { numRuns: 500, seed: 1 },
    );
  });

  it('is known for every tail of the list and every room', () => {
    fc.assert(
      fc.property(goods, fc.nat(4), fc.integer({ min: 0, max: 70 }), (wanted, from, room) => {
        const first = Math.min(from, wanted.lengths.length);
        const tail = {
          lengths: wanted.lengths.slice(first),
          demands: wanted.demands.slice(first),
          worth: wanted.worth.slice(first),
        };
        expect(new SuffixWorth(wanted, 70, work()).most(first, room)).toBe(mostWorth(tail, room));
      }),
      { numRuns: 300, seed: 2 },
    );
  });
});
