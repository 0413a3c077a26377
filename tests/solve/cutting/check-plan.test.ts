import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import type { CuttingPlan, CuttingProblem } from '../../../src/solve/cutting/problem.js';

/** Two 8 ft boards in 1/8 in, blade 1/8 in, 1/2 in squared off at the start. */
const problem: CuttingProblem = {
  pieces: [
    { id: 'rail', length: 480, count: 2 },
    { id: 'slat', length: 280, count: 2 },
    { id: 'beam', length: 900, count: 1 },
  ],
  stock: [{ id: '8 ft', length: 768, cost: 598, available: 2, trimStart: 4, trimEnd: 0 }],
  kerf: 1,
};

// By hand: 4 + 480 + 1 + 280 = 765; 768 - 765 = 3, less one more cut leaves 2.
const board = { stock: '8 ft', cuts: ['rail', 'slat'], offcut: 2 };
const good: CuttingPlan = {
  cost: 1196,
  lowerBound: 1196,
  proof: { kind: 'bound' },
  boards: [board, board],
  missing: [{ piece: 'beam', count: 1, why: 'longer-than-every-board' }],
  work: 0,
  duals: new Map(),
};

describe('adding a plan up again', () => {
  it('finds nothing wrong with a plan worked out by hand', () => {
    expect(checkPlan(problem, good)).toEqual([]);
  });

  it.each<[string, Partial<CuttingPlan>, RegExp]>([
    ['a wrong sum of money', { cost: 1195, lowerBound: 1195 }, /cost 1196, not 1195/],
    ['a gap that is not told', { lowerBound: 1100 }, /do not differ by 0/],
    ['a proof beside a gap', { proof: { kind: 'none', gap: 5 } }, /do not differ by 5/],
    ['a wrong offcut', { boards: [board, { ...board, offcut: 3 }] }, /offcut of 2, not 3/],
    ['shortest first', { boards: [board, { ...board, cuts: ['slat', 'rail'] }] }, /longest first/],
    ['an unknown board', { boards: [board, { ...board, stock: '9 ft' }] }, /not in the stock/],
    ['an unknown piece', { boards: [board, { ...board, cuts: ['leg'] }] }, /nobody asked for/],
    [
      'an overfull board',
      { boards: [{ ...board, cuts: ['rail', 'rail'] }, board] },
      /197 too short/,
    ],
    [
      'a piece too few',
      { boards: [board, { ...board, cuts: ['rail'], offcut: 283 }] },
      /slat is cut 1/,
    ],
    ['a board taken for nothing', { boards: [board, board, { ...board, cuts: [] }] }, /not cut/],
    [
      'a board too many',
      { boards: [board, board, board] },
      /3 boards 8 ft are taken, but there are 2/,
    ],
    ['a missing piece not told', { missing: [] }, /beam is cut 0 and missing 0 times, not 1/],
  ])('finds %s', (_title, change, words) => {
    expect(checkPlan(problem, { ...good, ...change }).join(' ')).toMatch(words);
  });
});
