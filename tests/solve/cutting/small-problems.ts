import fc from 'fast-check';
import type { CuttingProblem } from '../../../src/solve/cutting/problem.js';

/** Problems small enough to try every way: up to 4 lengths, 9 pieces, 4 kinds of board, some of them few. */
export const smallProblem: fc.Arbitrary<CuttingProblem> = fc
  .record({
    kerf: fc.integer({ min: 0, max: 3 }),
    pieces: fc.array(
      fc.record({ length: fc.integer({ min: 4, max: 30 }), count: fc.integer({ min: 0, max: 3 }) }),
      { minLength: 1, maxLength: 4 },
    ),
    stock: fc.array(
      fc.record({
        length: fc.integer({ min: 8, max: 60 }),
        cost: fc.integer({ min: 0, max: 40 }),
        available: fc.option(fc.integer({ min: 0, max: 3 })),
        trimStart: fc.integer({ min: 0, max: 2 }),
        trimEnd: fc.integer({ min: 0, max: 1 }),
      }),
      { minLength: 1, maxLength: 4 },
    ),
  })
  .map(({ kerf, pieces, stock }) => ({
    kerf,
    pieces: pieces.map((piece, place) => ({ id: `p${place}`, ...piece })),
    stock: stock.map(({ available, ...board }, place) => ({
      id: `s${place}`,
      ...board,
      ...(available === null ? {} : { available }),
    })),
  }));
