import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import type { Stock } from '../../../src/solve/cutting/problem.js';

const board = (id: string, length: number, more: Partial<Stock> = {}): Stock => ({
  id,
  length,
  cost: length,
  trimStart: 0,
  trimEnd: 0,
  ...more,
});

describe('kerf between pieces', () => {
  // Arithmetic: 3 x 1000 + 2 x 3 = 3006 mm; 3 x 998 + 2 x 3 = 3000 mm; 3000 - 2000 - 6 = 994 mm.
  it.each([
    [
      'field case F07: three 1000 mm pieces do not come from one 3000 mm board',
      1000,
      3000,
      2,
      [994, 1997],
    ],
    ['field case F07: three 998 mm pieces just do, and leave nothing', 998, 3000, 1, [0]],
    ['three 1000 mm pieces come from 3006 mm', 1000, 3006, 1, [0]],
    ['what is left thinner than the blade is dust', 1000, 3008, 1, [0]],
    ['what is left beyond one more cut is an offcut', 1000, 3012, 1, [3]],
  ])('%s', (_title, length, boardLength, boards, offcuts) => {
    const problem = {
      pieces: [{ id: 'A', length, count: 3 }],
      stock: [board('S', boardLength)],
      kerf: 3,
    };
    const plan = planCutting(problem);
    expect(checkPlan(problem, plan)).toEqual([]);
    expect(plan.boards.length).toBe(boards);
    expect(plan.boards.map(one => one.offcut).sort((a, b) => a - b)).toEqual(offcuts);
  });
});
