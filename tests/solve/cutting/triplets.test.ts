import { describe, expect, it } from 'vitest';
import { checkPlan } from '../../../src/solve/cutting/check-plan.js';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import { seededNumbers } from '../../bench/cutting/workbook-set.js';

/**
 * Pieces that fill boards of 1000 exactly, three on each (E. Falkenauer, A hybrid grouping genetic algorithm for
 * bin packing, Journal of Heuristics 2, 1996): the first 380 to 490, the second from 250 to half of what is left.
 */
function triplets(boards: number, seed: number): number[] {
  const random = seededNumbers(seed);
  return Array.from({ length: boards }, () => {
    const first = random(380, 490);
    const second = random(250, Math.floor((1000 - first) / 2));
    return [first, second, 1000 - first - second];
  }).flat();
}

describe('triplets, whose cheapest plan is known by how they are made', () => {
  it.each([
    [20, 1],
    [20, 2],
    [20, 3],
    [20, 4],
    [20, 5],
    [20, 6],
    [40, 7],
    [40, 8],
    [40, 9],
    [83, 10],
    [167, 11],
    [167, 12],
  ])('cuts %i boards without waste (start number %i)', (boards, seed) => {
    const pieces = triplets(boards, seed).map((length, place) => ({
      id: `${place}`,
      length,
      count: 1,
    }));
    const stock = [{ id: 'board', length: 1000, cost: 700, trimStart: 0, trimEnd: 0 }];
    const problem = { pieces, stock, kerf: 0 };
    // Five hundred pieces may take more than the usual work.
    const plan = planCutting(problem, { effort: boards > 100 ? 4 : 1 });
    expect(checkPlan(problem, plan)).toEqual([]);
    expect(plan.proof.kind).not.toBe('none');
    expect(plan.cost).toBe(700 * boards);
    expect(plan.boards.every(one => one.offcut === 0)).toBe(true);
  });
});
