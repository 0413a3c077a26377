import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { relax } from '../../../src/solve/cutting/column-generation.js';
import { stockLimits } from '../../../src/solve/cutting/count-limits.js';
import { dive } from '../../../src/solve/cutting/dive.js';
import { finishDive } from '../../../src/solve/cutting/finish-dive.js';
import { costOf, fillGreedily, wholeProblem } from '../../../src/solve/cutting/greedy.js';
import { normalize } from '../../../src/solve/cutting/normalize.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import { searchCounts } from '../../../src/solve/cutting/search-counts.js';
import { searchListed } from '../../../src/solve/cutting/search-listed.js';
import { everyWay } from './every-way.js';
import { smallProblem } from './small-problems.js';

/** Boards that cost something and never run out, so that every piece has one. */
const endless = smallProblem.map(({ pieces, stock, kerf }) => ({
  kerf,
  pieces: pieces.map(piece => ({ ...piece, length: Math.min(piece.length, 20) })),
  stock: stock.map(({ available: _, ...board }) => ({
    ...board,
    length: board.length + 15,
    cost: board.cost + 1,
  })),
}));

const work = () => ({ done: 0, limit: Infinity });

describe('each search on its own, begun far above the bound', () => {
  it('finds the cheapest plan by listing, by settling board counts, and never below the bound', () => {
    fc.assert(
      fc.property(endless, fc.nat(2), (problem, few) => {
        const reduced = normalize(problem);
        const target = costOf(reduced, fillGreedily(reduced, wholeProblem(reduced)));
        if (target === 0) return;
        const { cost } = everyWay(problem);
        const relaxation = relax(reduced, [], work());
        expect(relaxation.bound).toBeLessThanOrEqual(cost * 1_000_000);
        const aim = { limits: stockLimits(reduced), target, floor: 0 };
        const listed = searchListed(reduced, { ...relaxation, most: 1e6 }, aim, work());
        expect(listed).toMatchObject({ cost, complete: true });
        const { columns } = relaxation.program;
        const counted = searchCounts(reduced, columns, { target, floor: 0, few }, work());
        expect(counted).toMatchObject({ cost, complete: true });
        const known = fillGreedily(reduced, wholeProblem(reduced));
        const dived = dive(reduced, relaxation, { known, floor: 0 }, work());
        expect(costOf(reduced, dived)).toBeGreaterThanOrEqual(cost);
      }),
      { numRuns: 400, seed: 1 },
    );
  });

  it('finishes a dive at the cheapest cost from where it began, and never below', () => {
    fc.assert(
      fc.property(endless, problem => {
        const reduced = normalize(problem);
        const { cost } = everyWay(problem);
        if (cost === 0) return;
        const { prices, bound } = relax(reduced, [], work());
        const begin = { taken: [], rest: wholeProblem(reduced), prices, bound };
        const plan = finishDive(reduced, [begin], cost, { done: 0, limit: 1e9 });
        expect(plan === undefined ? undefined : costOf(reduced, plan)).toBe(cost);
        expect(finishDive(reduced, [begin], cost - 1, { done: 0, limit: 1e9 })).toBeUndefined();
      }),
      { numRuns: 200, seed: 4 },
    );
  });

  it('reports nothing, and says so for certain, when it is asked for less than the cheapest', () => {
    fc.assert(
      fc.property(endless, fc.nat(2), (problem, few) => {
        const reduced = normalize(problem);
        const target = everyWay(problem).cost - 1;
        if (target < 0) return;
        const relaxation = relax(reduced, [], work());
        const aim = { limits: stockLimits(reduced), target, floor: 0 };
        const listed = searchListed(reduced, { ...relaxation, most: 1e6 }, aim, work());
        expect(listed).toMatchObject({ uses: undefined, complete: true });
        const { columns } = relaxation.program;
        const counted = searchCounts(reduced, columns, { target, floor: 0, few }, work());
        expect(counted).toMatchObject({ uses: undefined, complete: true });
      }),
      { numRuns: 300, seed: 2 },
    );
  });
});

describe('lengths in place of prices', () => {
  // Costs of hundreds of thousands of cents lift a bound of the search beyond whole numbers that are exact. Sum on
  // paper: the pieces need 26012 units, four boards of 4600 and two of 3832 that are there hold 26064.
  it('four long boards and two shorter ones on hand hold everything: nothing is bought', () => {
    const stock = [
      { id: 'long, there', length: 4600, cost: 0, available: 4 },
      { id: 'long', length: 4600, cost: 365_760 },
      { id: 'middle, there', length: 3832, cost: 0, available: 2 },
      { id: 'middle', length: 3832, cost: 304_800 },
      { id: 'short', length: 3064, cost: 243_840 },
      { id: 'shortest', length: 2296, cost: 182_880 },
    ].map(board => ({ ...board, trimStart: 0, trimEnd: 0 }));
    const lengths = [644, 552, 548, 484, 376, 233, 112];
    const counts = [10, 16, 4, 6, 4, 12, 12];
    const pieces = lengths.map((length, i) => ({ id: `${length}`, length, count: counts[i] ?? 0 }));
    const problem = { pieces, stock, kerf: 0 };
    const plan = planCutting(problem);
    expect(checkPlan(problem, plan)).toEqual([]);
    expect(plan.missing).toEqual([]);
    expect(plan.cost).toBe(0);
  });
});
