import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partsPerCent } from '../../../src/solve/cutting/bound.js';
import { relax } from '../../../src/solve/cutting/column-generation.js';
import { nextCost, stockLimits } from '../../../src/solve/cutting/count-limits.js';
import { costOf, fillGreedily, wholeProblem } from '../../../src/solve/cutting/greedy.js';
import type { LadderEnd } from '../../../src/solve/cutting/ladder.js';
import { normalize } from '../../../src/solve/cutting/normalize.js';
import { averageOf, otherPrices } from '../../../src/solve/cutting/other-prices.js';
import { searchWhole } from '../../../src/solve/cutting/search-whole.js';
import { everyWay } from './every-way.js';
import { smallProblem } from './small-problems.js';

/** One kind of board that never runs out and holds every piece. */
const oneKind = smallProblem
  .filter(({ pieces }) => pieces.some(({ count }) => count > 0))
  .map(({ pieces, kerf }) => ({
    kerf,
    pieces: pieces.map(piece => ({ ...piece, length: Math.min(piece.length, 20) })),
    stock: [{ id: 'board', length: 31, cost: 7, trimStart: 0, trimEnd: 0 }],
  }));

const work = () => ({ done: 0, limit: Infinity });

describe('the search of a whole purchase of one kind of board', () => {
  it('comes from the bound up to the cheapest plan, by every way to cut the pieces', () => {
    fc.assert(
      fc.property(oneKind, problem => {
        const reduced = normalize(problem);
        const relaxation = relax(reduced, [], work());
        const bound = Math.ceil(relaxation.bound / partsPerCent);
        const uses = fillGreedily(reduced, wholeProblem(reduced));
        const cost = costOf(reduced, uses);
        const lowerBound = nextCost(reduced, stockLimits(reduced), bound);
        let end: LadderEnd = { uses, cost, lowerBound, cases: 0 };
        // One board more a turn at most, so it ends.
        for (let turn = 0; turn < cost && end.lowerBound < end.cost; turn++) {
          end = searchWhole(reduced, relaxation, end, work());
        }
        expect(end.cost).toBe(everyWay(problem).cost);
        expect(costOf(reduced, end.uses)).toBe(end.cost);
      }),
      { numRuns: 200, seed: 1 },
    );
  });

  it('goes by prices that are each proven: no bound lies above the cheapest plan', () => {
    fc.assert(
      fc.property(oneKind, problem => {
        const reduced = normalize(problem);
        const relaxation = relax(reduced, [], work());
        const all = otherPrices(reduced, relaxation, 4, work());
        expect(all).toHaveLength(4);
        const { cost } = everyWay(problem);
        for (const { bound } of [...all, averageOf(reduced, all)]) {
          expect(bound).toBeLessThanOrEqual(cost * partsPerCent);
        }
      }),
      { numRuns: 200, seed: 2 },
    );
  });
});
