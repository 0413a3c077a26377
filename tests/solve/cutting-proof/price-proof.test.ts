import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import type { CuttingProblem } from '../../../src/solve/cutting/problem.js';
import { bestFilling, type Filler } from '../../../src/solve/cutting-proof/best-filling.js';
import { type PriceProof, priceProof } from '../../../src/solve/cutting-proof/price-proof.js';

const PATIENT = 1_000_000;

/** Every filling there is, one number of each piece after the other. */
function mostByTrying(room: number, fillers: readonly Filler[]): number {
  const [first, ...rest] = fillers;
  if (first === undefined) return 0;
  let most = 0;
  for (let times = 0; times <= first.count && times * first.takes <= room; times++)
    most = Math.max(most, times * first.worth + mostByTrying(room - times * first.takes, rest));
  return most;
}

describe('the most valuable pieces on one board', () => {
  const filler = fc.record({
    takes: fc.integer({ min: 1, max: 30 }),
    worth: fc.integer({ min: 0, max: 40 }),
    count: fc.integer({ min: 0, max: 4 }),
  });

  test('are never worth less than any filling that is tried, and add up', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 90 }),
        fc.array(filler, { maxLength: 5 }),
        (room, all) => {
          const found = bestFilling(room, all, { left: PATIENT });
          expect(found?.worth).toBe(mostByTrying(room, all));
          const sum = (of: (one: Filler) => number) =>
            all.reduce((total, one, at) => total + (found?.times[at] ?? 0) * of(one), 0);
          expect(sum(({ worth }) => worth)).toBe(found?.worth);
          expect(sum(({ takes }) => takes)).toBeLessThanOrEqual(room);
          for (const [at, { count }] of all.entries())
            expect(found?.times[at] ?? 0).toBeLessThanOrEqual(count);
        },
      ),
    );
  });

  test('are given up when the list grows beyond the patience', () => {
    const many = Array.from({ length: 20 }, (_, at) => ({
      takes: 1 + at,
      worth: 2 ** at,
      count: 1,
    }));
    expect(bestFilling(1000, many, { left: 10 })).toBeUndefined();
  });
});

const ENDS = { trimStart: 0, trimEnd: 0 };

function proofOf(problem: CuttingProblem): PriceProof | undefined {
  return priceProof(problem, planCutting(problem));
}

describe('the sum behind the bound', () => {
  // Source: sum on paper: a board of 6 at 6 cents holds two pieces of 3, so each piece is worth 3; four
  // of them 12, which is what two boards cost.
  test('is exact where every board is full', () => {
    const proof = proofOf({
      kerf: 0,
      pieces: [{ id: 'a', length: 3, count: 4 }],
      stock: [{ id: 's', length: 6, cost: 6, ...ENDS }],
    });
    expect(proof?.parts).toBe(1);
    expect(proof?.worths).toEqual([{ piece: 'a', count: 4, worth: 3 }]);
    expect(proof?.bound).toBe(12);
  });

  // Source: sum on paper: the board on hand saves two pieces worth 3; the other two still cost 6.
  test('takes off the rent of a board of which there is only one', () => {
    const proof = proofOf({
      kerf: 0,
      pieces: [{ id: 'a', length: 3, count: 4 }],
      stock: [
        { id: 'h', length: 6, cost: 0, available: 1, ...ENDS },
        { id: 's', length: 6, cost: 6, ...ENDS },
      ],
    });
    expect(proof?.boards.map(({ rent }) => rent)).toEqual([6, 0]);
    expect(proof?.bound).toBe(6);
  });

  test('is not claimed where a piece has no board', () => {
    const pieces = [{ id: 'a', length: 9, count: 1 }];
    const stock = [{ id: 's', length: 6, cost: 6, ...ENDS }];
    expect(proofOf({ kerf: 0, pieces, stock })).toBeUndefined();
  });

  test('never comes out above what the plan costs, and no board holds more than it allows', () => {
    const pieces = fc.array(
      fc.record({ length: fc.integer({ min: 2, max: 20 }), count: fc.integer({ min: 1, max: 5 }) }),
      { minLength: 1, maxLength: 4 },
    );
    fc.assert(
      fc.property(pieces, fc.integer({ min: 0, max: 2 }), (wanted, kerf) => {
        const problem: CuttingProblem = {
          kerf,
          pieces: wanted.map((piece, at) => ({ id: `p${at}`, ...piece })),
          stock: [
            { id: 'h', length: 15, cost: 0, available: 2, ...ENDS },
            { id: 's', length: 24, cost: 748, ...ENDS },
            { id: 'l', length: 31, cost: 998, trimStart: 1, trimEnd: 0 },
          ],
        };
        const plan = planCutting(problem);
        const proof = priceProof(problem, plan);
        if (proof === undefined) throw new Error('no proof');
        expect(proof.bound).toBeLessThanOrEqual(plan.cost * proof.parts);
        for (const { stock, allowed } of proof.boards) {
          const room = stock.length - stock.trimStart + kerf;
          const fillers = problem.pieces.map(({ id, length, count }) => ({
            takes: length + kerf,
            worth: proof.worths.find(({ piece }) => piece === id)?.worth ?? 0,
            count,
          }));
          expect(mostByTrying(room, fillers)).toBeLessThanOrEqual(allowed);
        }
      }),
      { numRuns: 60 },
    );
  });
});
