import { describe, expect, it } from 'vitest';
import { normalize } from '../../../src/solve/cutting/normalize.js';
import type { Stock } from '../../../src/solve/cutting/problem.js';

const board = (id: string, length: number, cost: number, available?: number): Stock => ({
  id,
  length,
  cost,
  trimStart: 0,
  trimEnd: 0,
  ...(available === undefined ? {} : { available }),
});

const ids = (stock: readonly Stock[]) => stock.map(one => one.id);

describe('working kerf and trim into the lengths', () => {
  it('gives each piece and each board one kerf more, in the coarsest unit', () => {
    // 998 + 2 = 1000 and 498 + 2 = 500: unit 500. Board 3000 - 10 - 5 + 2 = 2987, or 5 whole units.
    const { lengths, demands, kinds } = normalize({
      pieces: [
        { id: 'A', length: 498, count: 3 },
        { id: 'B', length: 998, count: 2 },
        { id: 'C', length: 498, count: 1 },
      ],
      stock: [{ ...board('S', 3000, 900), trimStart: 10, trimEnd: 5 }],
      kerf: 2,
    });
    expect({ lengths, demands, rooms: kinds.map(kind => kind.room) }).toEqual({
      lengths: [2, 1],
      demands: [2, 4],
      rooms: [5],
    });
  });

  it('drops a store board that a longer one undercuts, but never a cheaper or a longer one', () => {
    const stock = [
      board('8 ft', 800, 600),
      board('10 ft', 1000, 590),
      board('12 ft', 1200, 900),
      board('offcut', 700, 0, 1),
    ];
    const { kinds } = normalize({ pieces: [{ id: 'A', length: 100, count: 1 }], stock, kerf: 0 });
    expect(kinds.map(kind => ids(kind.stock))).toEqual([['12 ft'], ['10 ft'], ['offcut']]);
  });

  it('puts boards on hand that are alike together', () => {
    const stock = [board('first', 700, 0, 1), board('second', 700, 0, 2), board('store', 900, 50)];
    const { kinds } = normalize({ pieces: [{ id: 'A', length: 300, count: 5 }], stock, kerf: 0 });
    expect(kinds.map(kind => [ids(kind.stock), kind.available])).toEqual([
      [['store'], Infinity],
      [['first', 'second'], 3],
    ]);
  });

  it('keeps a way to leave a piece out, dearer than anything, only where boards can run out', () => {
    const pieces = [{ id: 'A', length: 300, count: 5 }];
    const few = normalize({ pieces, stock: [board('S', 900, 50, 1)], kerf: 0 });
    expect(few.kinds.map(kind => kind.single)).toEqual([false, true]);
    expect(few.kinds.at(-1)?.cost).toBeGreaterThan(50);
    const many = normalize({ pieces, stock: [board('S', 900, 50)], kerf: 0 });
    expect(many.kinds.map(kind => kind.single)).toEqual([false]);
  });
});
