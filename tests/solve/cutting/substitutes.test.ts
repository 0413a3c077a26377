import { createRequire } from 'node:module';
import type { LegacyHighs } from 'highs';
import { describe, expect, it } from 'vitest';
import { relax } from '../../../src/solve/cutting/column-generation.js';
import { normalize } from '../../../src/solve/cutting/normalize.js';
import { seededNumbers } from '../../bench/cutting/workbook-set.js';
import { everyFullBoard, lpText } from './whole-model.js';

// The package describes its types for `require` only.
const load: () => Promise<LegacyHighs> = createRequire(import.meta.url)('highs');
const highs = await load();

/** Pieces for one store length, few to a board. */
function oneLength(seed: number) {
  const random = seededNumbers(seed);
  const pieces = Array.from({ length: 14 }, (_, place) => ({
    id: `${place}`,
    length: random(400, 1400),
    count: random(1, 6),
  }));
  const board = { id: 'board', length: 2400, cost: 1000, trimStart: 10, trimEnd: 0 };
  return { pieces, stock: [board], kerf: 3 };
}

// HiGHS (Q. Huangfu and J.A.J. Hall, Mathematical Programming Computation 10, 2018) over every way to fill a board,
// parts of boards allowed.
describe('the relaxed problem of one store length, solved with longer pieces standing in for shorter ones', () => {
  it.each([1, 2, 3, 4, 5, 6, 7, 8])('costs what it costs over every full board (%i)', seed => {
    const problem = oneLength(seed);
    const ways = everyFullBoard(problem, 5000);
    if (ways === undefined) throw new Error('There are more ways than expected.');
    const text = lpText(problem, ways).replace(/General[\s\S]*End/, 'End');
    const { Status, ObjectiveValue } = highs.solve(text, { presolve: 'off' });
    expect(Status).toBe('Optimal');
    const relaxation = relax(normalize(problem), [], { done: 0, limit: Infinity });
    expect(relaxation.bound / 1_000_000).toBeCloseTo(ObjectiveValue, 2);
    // No stand-in is left among the columns: each holds pieces only.
    expect(relaxation.program.columns.amount.every(amount => amount > 0)).toBe(true);
  });
});
