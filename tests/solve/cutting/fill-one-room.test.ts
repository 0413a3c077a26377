import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { CoarseFilling } from '../../../src/solve/cutting/coarse-filling.js';
import type { Filling, Goods } from '../../../src/solve/cutting/knapsack.js';
import { RoomTable } from '../../../src/solve/cutting/room-table.js';

const goodsUpTo = (longest: number) =>
  fc
    .array(
      fc.record({
        length: fc.integer({ min: Math.ceil(longest / 30), max: longest }),
        demand: fc.integer({ min: 1, max: 4 }),
        worth: fc.integer({ min: 0, max: 50 }),
      }),
      { minLength: 1, maxLength: 5 },
    )
    .map(rows => ({
      lengths: rows.map(row => row.length),
      demands: rows.map(row => row.demand),
      worth: rows.map(row => row.worth),
    }));

/** The most that any choice of pieces is worth: every choice is tried. */
function everyChoice({ lengths, demands, worth }: Goods, room: number, i = 0): number {
  if (i === lengths.length) return 0;
  let most = 0;
  for (let count = 0; count <= (demands[i] ?? 0) && count * (lengths[i] ?? 0) <= room; count++) {
    const rest = everyChoice({ lengths, demands, worth }, room - count * (lengths[i] ?? 0), i + 1);
    most = Math.max(most, count * (worth[i] ?? 0) + rest);
  }
  return most;
}

function expectBest(filling: Filling | undefined, goods: Goods, room: number, over: number): void {
  const most = everyChoice(goods, room);
  expect(filling?.value).toBe(most > over ? most : undefined);
  if (filling === undefined) return;
  const sum = (of: ArrayLike<number>) =>
    filling.counts.reduce((total, count, i) => total + count * (of[i] ?? 0), 0);
  expect(sum(goods.worth)).toBe(most);
  expect(sum(goods.lengths)).toBeLessThanOrEqual(room);
  expect(filling.counts.every((count, i) => count <= (goods.demands[i] ?? 0))).toBe(true);
}

const over = fc.integer({ min: 0, max: 120 });
const work = () => ({ done: 0, limit: Infinity });

describe('one room filled', () => {
  it('from a table over every unit is worth as much as the best of all choices', () => {
    const table = new RoomTable();
    fc.assert(
      fc.property(goodsUpTo(20), fc.integer({ min: 1, max: 70 }), over, (goods, room, least) => {
        expectBest(table.solve(goods, { room, over: least }, work()), goods, room, least);
      }),
      { numRuns: 400, seed: 1 },
    );
  });

  it('led by coarse estimates is worth as much, in rooms of very many units', () => {
    const filler = new CoarseFilling();
    const rooms = fc.integer({ min: 1, max: 700_000 });
    fc.assert(
      fc.property(goodsUpTo(200_000), rooms, over, (goods, room, least) => {
        const { filling, exact } = filler.solve(goods, { room, over: least }, work());
        expect(exact).toBe(true);
        expectBest(filling, goods, room, least);
      }),
      { numRuns: 400, seed: 2 },
    );
  });
});
