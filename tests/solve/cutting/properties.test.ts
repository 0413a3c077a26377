import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import type { CuttingPlan, CuttingProblem } from '../../../src/solve/cutting/problem.js';
import { workbookProblem } from '../../bench/cutting/workbook-set.js';
import { smallProblem } from './small-problems.js';

const seeds = Array.from({ length: 12 }, (_, place) => 2005 + place);

/** Plans are compared by what they cost, and with boards running out by what they miss first. */
function rank(plan: CuttingPlan): [missing: number, cost: number] {
  return [plan.missing.reduce((sum, one) => sum + one.count, 0), plan.cost];
}

function isNoDearer(a: CuttingPlan, b: CuttingPlan): boolean {
  const [missingA, costA] = rank(a);
  const [missingB, costB] = rank(b);
  return missingA < missingB || (missingA === missingB && costA <= costB);
}

/** First-fit decreasing as a shopper does it: store boards of one length only, every piece on the first that has room. */
function firstFitDecreasing(problem: CuttingProblem, length: number, cost: number): number {
  const trimmed = length - (problem.stock[0]?.trimStart ?? 0);
  const used: number[] = [];
  const pieces = problem.pieces.flatMap(piece => Array<number>(piece.count).fill(piece.length));
  for (const piece of pieces.sort((a, b) => b - a)) {
    if (piece > trimmed) return Infinity;
    const place = used.findIndex(at => at + problem.kerf + piece <= trimmed);
    if (place < 0) used.push(piece);
    else used[place] = (used[place] ?? 0) + problem.kerf + piece;
  }
  return used.length * cost;
}

describe('purchases of the size of a project', () => {
  it.each(seeds)(
    'adds up, is proven and is no dearer than first-fit decreasing (start number %i)',
    seed => {
      const problem = workbookProblem(seed);
      const plan = planCutting(problem);
      expect(checkPlan(problem, plan)).toEqual([]);
      expect(plan.proof.kind).not.toBe('none');
      expect(plan.lowerBound).toBe(plan.cost);
      for (const { length, cost } of problem.stock.filter(stock => stock.cost > 0)) {
        expect(plan.cost).toBeLessThanOrEqual(firstFitDecreasing(problem, length, cost));
      }
    },
  );

  it('is the same plan every time, byte for byte', () => {
    const text = () => {
      const plan = planCutting(workbookProblem(2001));
      return JSON.stringify([plan, [...plan.duals]]);
    };
    expect(text()).toBe(text());
  });

  it.each(seeds.slice(0, 5))(
    'counts steps, boards and cuts alike in finer units (start number %i)',
    seed => {
      const problem = workbookProblem(seed);
      const { boards, ...rest } = planCutting(problem);
      const fine = planCutting(inFinerUnits(problem, 20));
      expect(fine).toEqual({
        ...rest,
        boards: boards.map(board => ({ ...board, offcut: board.offcut * 20 })),
      });
    },
  );

  it.each([0, 0.0005, 0.01])(
    'gives a plan and an honest gap when stopped early (effort %f)',
    effort => {
      for (const seed of seeds) {
        const problem = workbookProblem(seed);
        const best = planCutting(problem);
        const hasty = planCutting(problem, { effort });
        expect(checkPlan(problem, hasty)).toEqual([]);
        expect(hasty.lowerBound).toBeLessThanOrEqual(best.cost);
        expect(hasty.cost).toBeGreaterThanOrEqual(best.cost);
        expect(hasty.work).toBeLessThanOrEqual(best.work);
      }
    },
  );
});

function inFinerUnits(problem: CuttingProblem, times: number): CuttingProblem {
  return {
    kerf: problem.kerf * times,
    pieces: problem.pieces.map(piece => ({ ...piece, length: piece.length * times })),
    stock: problem.stock.map(stock => ({
      ...stock,
      length: stock.length * times,
      trimStart: stock.trimStart * times,
      trimEnd: stock.trimEnd * times,
    })),
  };
}

describe('what must hold for any problem', () => {
  it('costs the same however pieces and boards are listed', () => {
    const shuffled = smallProblem.chain(problem =>
      fc.record({
        problem: fc.constant(problem),
        pieces: fc.shuffledSubarray([...problem.pieces], { minLength: problem.pieces.length }),
        stock: fc.shuffledSubarray([...problem.stock], { minLength: problem.stock.length }),
      }),
    );
    fc.assert(
      fc.property(shuffled, ({ problem, pieces, stock }) => {
        expect(rank(planCutting({ ...problem, pieces, stock }))).toEqual(
          rank(planCutting(problem)),
        );
      }),
      { numRuns: 300, seed: 2 },
    );
  });

  it('never costs less with a thicker blade', () => {
    fc.assert(
      fc.property(smallProblem, problem => {
        const thicker = planCutting({ ...problem, kerf: problem.kerf + 1 });
        expect(isNoDearer(planCutting(problem), thicker)).toBe(true);
      }),
      { numRuns: 300, seed: 3 },
    );
  });

  it('never costs more with one more board on hand', () => {
    fc.assert(
      fc.property(smallProblem, fc.integer({ min: 4, max: 60 }), (problem, length) => {
        const found = { id: 'found', length, cost: 0, available: 1, trimStart: 0, trimEnd: 0 };
        const richer = planCutting({ ...problem, stock: [...problem.stock, found] });
        expect(isNoDearer(richer, planCutting(problem))).toBe(true);
      }),
      { numRuns: 300, seed: 4 },
    );
  });

  it('is worth, piece by piece, no more on any board than the board costs', () => {
    fc.assert(
      fc.property(smallProblem, problem => {
        const endless = problem.stock.map(({ available: _, ...stock }) => stock);
        const { duals } = planCutting({ ...problem, stock: endless });
        for (const stock of endless) {
          expect(
            mostWorth(problem, stock.length - stock.trimStart - stock.trimEnd, duals),
          ).toBeLessThanOrEqual(stock.cost * 1_000_000);
        }
      }),
      { numRuns: 300, seed: 5 },
    );
  });
});

/** The most that pieces on one board are worth, length unit by length unit. */
function mostWorth(
  problem: CuttingProblem,
  usable: number,
  duals: ReadonlyMap<string, number>,
): number {
  let most = Array<number>(Math.max(0, usable + problem.kerf) + 1).fill(0);
  for (const { id, length, count } of problem.pieces) {
    for (let one = 0; one < count; one++) {
      most = most.map((worth, room) => {
        const before = most[room - length - problem.kerf];
        return before === undefined ? worth : Math.max(worth, before + (duals.get(id) ?? 0));
      });
    }
  }
  return most.at(-1) ?? 0;
}

describe('second wishes', () => {
  it('takes one long board in place of two short ones at the same price', () => {
    const stock = [8, 16].map(feet => ({
      id: `${feet} ft`,
      length: feet * 100,
      cost: feet * 100,
      trimStart: 0,
      trimEnd: 0,
    }));
    const plan = planCutting({ pieces: [{ id: 'A', length: 400, count: 8 }], stock, kerf: 0 });
    expect(plan.boards.map(board => board.stock)).toEqual(['16 ft', '16 ft']);
  });

  it('gathers what is left on one board and cuts equal boards in a row', () => {
    const stock = [{ id: 'S', length: 100, cost: 50, trimStart: 0, trimEnd: 0 }];
    const pieces = [
      { id: 'A', length: 40, count: 2 },
      { id: 'B', length: 30, count: 2 },
    ];
    const plan = planCutting({ pieces, stock, kerf: 0 });
    expect(plan.boards.map(board => board.cuts.join(''))).toEqual(['AA', 'BB']);
  });
});

describe('numbers that are not whole', () => {
  it.each([
    [
      'a broken length',
      { pieces: [{ id: 'A', length: 1.5, count: 1 }], stock: [], kerf: 0 },
      /piece A/,
    ],
    ['a negative kerf', { pieces: [], stock: [], kerf: -1 }, /kerf/],
    [
      'one id twice',
      { pieces: [1, 2].map(length => ({ id: 'A', length, count: 1 })), stock: [], kerf: 0 },
      /id A/,
    ],
  ])('refuses %s by name', (_title, problem, words) => {
    expect(() => planCutting(problem)).toThrow(words);
  });

  it('has nothing to do without pieces, and names every piece without boards', () => {
    const none = planCutting({ pieces: [], stock: [], kerf: 3 });
    expect(none).toMatchObject({ cost: 0, boards: [], missing: [], proof: { kind: 'bound' } });
    const all = planCutting({ pieces: [{ id: 'A', length: 5, count: 2 }], stock: [], kerf: 3 });
    expect(all.missing).toEqual([{ piece: 'A', count: 2, why: 'longer-than-every-board' }]);
  });
});
