import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import type { CutBoard, CuttingPlan, CuttingProblem } from '../../../src/solve/cutting/problem.js';
import { workbookProblem } from '../../bench/cutting/workbook-set.js';
import { smallProblem } from './small-problems.js';

const text = (board: CutBoard): string => JSON.stringify(board);

/** How many boards of an earlier plan are found again as they were. */
function kept(earlier: readonly CutBoard[], { boards }: CuttingPlan): number {
  const left = boards.map(text);
  return earlier.filter(board => {
    const at = left.indexOf(text(board));
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  }).length;
}

/** The problem after the first board was cut as planned: its pieces and the board are gone. */
function afterFirst(problem: CuttingProblem, [first]: readonly CutBoard[]): CuttingProblem {
  const cut = (id: string) => first?.cuts.filter(one => one === id).length ?? 0;
  return {
    ...problem,
    pieces: problem.pieces.map(piece => ({ ...piece, count: piece.count - cut(piece.id) })),
    stock: problem.stock.map(board =>
      board.available !== undefined && board.id === first?.stock
        ? { ...board, available: board.available - 1 }
        : board,
    ),
  };
}

describe('planning again with boards already planned', () => {
  it.each([101, 102, 103, 104])(
    'leaves every other board as it was after the first one is cut (start number %i)',
    seed => {
      const problem = workbookProblem(seed);
      const before = planCutting(problem);
      const rest = afterFirst(problem, before.boards);
      const keep = before.boards.slice(1);
      const after = planCutting(rest, { keep });
      expect(checkPlan(rest, after)).toEqual([]);
      // The cheapest plan of the rest is the old one without its first board: anything cheaper would have been cheaper before.
      expect(kept(keep, after)).toBe(keep.length);
    },
  );

  it('keeps the boards that a piece cut too short does not touch', () => {
    const stock = [{ id: '8 ft', length: 96, cost: 500, trimStart: 0, trimEnd: 0 }];
    const pieces = [
      { id: 'rail', length: 48, count: 4 },
      { id: 'slat', length: 30, count: 3 },
    ];
    const before = planCutting({ pieces, stock, kerf: 0 });
    expect(before.cost).toBe(1500);
    // One slat is split: it has to be cut again, from a board of its own.
    const more = {
      kerf: 0,
      stock,
      pieces: [
        { ...pieces[0], count: 4 },
        { ...pieces[1], count: 4 },
      ],
    };
    const problem = more as CuttingProblem;
    const after = planCutting(problem, { keep: before.boards });
    expect(after.cost).toBe(2000);
    expect(kept(before.boards, after)).toBe(3);
  });

  it('passes over boards that no longer are what they were', () => {
    const stock = [{ id: 'S', length: 96, cost: 500, available: 2, trimStart: 0, trimEnd: 0 }];
    const problem = { kerf: 0, stock, pieces: [{ id: 'A', length: 40, count: 4 }] };
    const board = (stockId: string, cuts: string[], offcut: number) => ({
      stock: stockId,
      cuts,
      offcut,
    });
    for (const earlier of [
      board('T', ['A', 'A'], 16),
      board('S', ['B'], 56),
      board('S', ['A', 'A'], 15),
      board('S', ['A', 'A', 'A'], 0),
    ]) {
      const after = planCutting(problem, { keep: [earlier] });
      expect(checkPlan(problem, after)).toEqual([]);
      expect(kept([earlier], after)).toBe(0);
    }
  });

  it('never costs more nor misses more for it, whatever boards are given', () => {
    fc.assert(
      fc.property(smallProblem, smallProblem, (problem, other) => {
        const plain = planCutting(problem);
        const keep = planCutting({ ...other, kerf: problem.kerf }).boards;
        const after = planCutting(problem, { keep });
        expect(checkPlan(problem, after)).toEqual([]);
        const missing = (plan: CuttingPlan) =>
          plan.missing.reduce((sum, { count }) => sum + count, 0);
        expect([after.cost, missing(after)]).toEqual([plain.cost, missing(plain)]);
      }),
      { numRuns: 300, seed: 6 },
    );
  });
});

describe('the order of the last two wishes', () => {
  const longest = ({ boards }: CuttingPlan) => Math.max(...boards.map(({ offcut }) => offcut));

  it('gives longer offcuts when they come first, at the same cost', () => {
    const sums = { settings: 0, offcut: 0 };
    for (let seed = 201; seed <= 210; seed++) {
      const problem = workbookProblem(seed);
      const [usual, long] = (['settings', 'offcut'] as const).map(first => {
        const plan = planCutting(problem, { first });
        expect(checkPlan(problem, plan)).toEqual([]);
        sums[first] += longest(plan);
        return plan.cost;
      });
      expect(long).toBe(usual);
    }
    expect(sums.offcut).toBeGreaterThan(sums.settings);
  });
});
