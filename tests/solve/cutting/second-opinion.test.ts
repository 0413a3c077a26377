import { createRequire } from 'node:module';
import type { LegacyHighs } from 'highs';
import { describe, expect, it } from 'vitest';
import { planCutting } from '../../../src/solve/cutting/plan-cutting.js';
import { workbookProblem } from '../../bench/cutting/workbook-set.js';
import { everyFullBoard, lpText } from './whole-model.js';

/**
 * Start numbers from 3001 on whose boards can be filled in at most 600 ways. Number 3065 is left out: the general
 * solver does not end within a second.
 */
const seeds = [
  3002, 3013, 3015, 3026, 3027, 3030, 3036, 3039, 3074, 3075, 3081, 3085, 3088, 3089, 3093, 3094,
  3107, 3110, 3116, 3117, 3120, 3126, 3127, 3131,
];

// The package describes its types for `require` only.
const load: () => Promise<LegacyHighs> = createRequire(import.meta.url)('highs');
const highs = await load();

// HiGHS (Q. Huangfu and J.A.J. Hall, Parallelizing the dual revised simplex method, Mathematical Programming
// Computation 10, 2018) with presolve off, over every way to fill a board. Only the least cost is compared.
describe('a general solver for whole-number programs on the same purchase', () => {
  it.each(seeds)('comes to the same least cost (start number %i)', seed => {
    const problem = workbookProblem(seed);
    const ways = everyFullBoard(problem, 600);
    if (ways === undefined) throw new Error('There are more ways than expected.');
    const options = { presolve: 'off', mip_rel_gap: 0, time_limit: 10 } as const;
    const { Status, ObjectiveValue } = highs.solve(lpText(problem, ways), options);
    expect(Status).toBe('Optimal');
    expect(planCutting(problem).cost).toBe(Math.round(ObjectiveValue));
  });
});
