import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import type { Stock } from '../../../src/solve/cutting/problem.js';

const board = (length: number, more: Partial<Stock> = {}): Stock => ({
  id: `board of ${length}`,
  length,
  cost: length,
  trimStart: 0,
  trimEnd: 0,
  ...more,
});

const pieces = (length: number, count: number) => [{ id: `piece of ${length}`, length, count }];

describe('field case F07: three equal pieces from one stick, in mm, blade 3 mm', () => {
  // Arithmetic: 3 x 1000 + 2 x 3 = 3006; 3 x 998 + 2 x 3 = 3000; 3000 - 2 x 1000 - 2 x 3 = 994.
  it.each([
    ['three 1000 mm pieces do not come from one 3000 mm board', 1000, 3000, [994, 1997]],
    ['three 998 mm pieces just do, and leave nothing', 998, 3000, [0]],
    ['three 1000 mm pieces come from 3006 mm without a last cut', 1000, 3006, [0]],
    ['what is left thinner than the blade is dust', 1000, 3008, [0]],
    ['what is left beyond one more cut is an offcut', 1000, 3012, [3]],
  ])('%s', (_title, length, boardLength, offcuts) => {
    const problem = { pieces: pieces(length, 3), stock: [board(boardLength)], kerf: 3 };
    const plan = planCutting(problem);
    expect(checkPlan(problem, plan)).toEqual([]);
    expect(plan.boards.map(one => one.offcut).sort((a, b) => a - b)).toEqual(offcuts);
    expect(plan.proof.kind).not.toBe('none');
  });
});

describe('field case F08: two 48 in parts from an 8 ft board, in 1/8 in, blade 1/8 in', () => {
  const part = 48 * 8;

  it('takes two 8 ft boards, or one 10 ft board where there is one', () => {
    const eight = board(96 * 8, { cost: 500 });
    const ten = board(120 * 8, { cost: 700 });
    const cost = (stock: Stock[]) => planCutting({ pieces: pieces(part, 2), stock, kerf: 1 }).cost;
    expect(cost([eight])).toBe(1000);
    expect(cost([eight, ten])).toBe(700);
  });

  it('leaves 23 in plus of the 10 ft board', () => {
    const plan = planCutting({ pieces: pieces(part, 2), stock: [board(120 * 8)], kerf: 1 });
    expect(plan.boards.map(one => one.offcut / 8)).toEqual([23.75]);
  });

  // 96 - 48 - 1/8 = 47 7/8; with a 1/4 in squaring trim and its own 1/8 in: 47 1/2.
  it.each([
    ['47 7/8 in is what remains beside the first part', 0, 47.875],
    ['47 1/2 in remains when the end is squared first', 3, 47.5],
  ])('%s', (_title, trimStart, remains) => {
    const boardsFor = (second: number) =>
      planCutting({
        pieces: [...pieces(part, 1), { id: 'second', length: second, count: 1 }],
        stock: [board(96 * 8, { trimStart })],
        kerf: 1,
      }).boards.length;
    expect(boardsFor(remains * 8)).toBe(1);
    expect(boardsFor(remains * 8 + 1)).toBe(2);
  });
});

describe('field case F09: four 21 in fronts from 8 ft, in 1/8 in, blade 1/8 in', () => {
  // 4 x 21 + 4 x 1/8 = 84 1/2, so 11 1/2 in may be skipped; from 15 in on, 17 1/2 in is left for the last one.
  const missing = (skipped: number, last: number) =>
    planCutting({
      pieces: [...pieces(21 * 8, 3), { id: 'last', length: last * 8, count: 1 }],
      stock: [board(96 * 8, { available: 1, trimStart: skipped * 8 + 1 })],
      kerf: 1,
    }).missing;

  it.each([
    ['starting 11 1/2 in in still gives four', 11.5, 21, 0],
    ['starting an eighth later does not', 11.625, 21, 1],
    ['starting 15 in in leaves 17 1/2 in for the last', 15, 17.5, 0],
    ['but no more than that', 15, 17.625, 1],
  ])('%s', (_title, skipped, last, count) => {
    expect(missing(skipped, last).reduce((sum, one) => sum + one.count, 0)).toBe(count);
  });

  it('says whether a piece is too long or the boards have run out', () => {
    expect(missing(15, 21).map(one => one.why)).toEqual(['no-board-left']);
    expect(missing(15, 90).map(one => one.why)).toEqual(['longer-than-every-board']);
  });
});

describe('field case F10: two 72 in and two 69 in sides from 12 ft boards, in 1/8 in', () => {
  it('pairs a long side with a short one, since two long ones and a cut are over 12 ft', () => {
    // 72 + 1/8 + 72 = 144 1/8 in; 72 + 1/8 + 69 = 141 1/8 in, and one more cut leaves 2 3/4 in.
    const sides = [...pieces(72 * 8, 2), ...pieces(69 * 8, 2)];
    const plan = planCutting({ pieces: sides, stock: [board(144 * 8)], kerf: 1 });
    const pair = { stock: 'board of 1152', cuts: ['piece of 576', 'piece of 552'], offcut: 22 };
    expect(plan.boards).toEqual([pair, pair]);
  });
});
