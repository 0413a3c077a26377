import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partsPerCent } from '../../../src/solve/cutting/bound.js';
import { listPatterns } from '../../../src/solve/cutting/list-patterns.js';
import { normalize } from '../../../src/solve/cutting/normalize.js';
import { smallProblem } from './small-problems.js';

/** Every choice of counts up to the demands. */
function everyChoice(demands: readonly number[]): number[][] {
  return demands.reduce<number[][]>(
    (choices, demand) =>
      choices.flatMap(choice =>
        Array.from({ length: demand + 1 }, (_, count) => [...choice, count]),
      ),
    [[]],
  );
}

describe('the patterns a plan can still use', () => {
  it.each([
    ['all', false],
    ['only the full ones', true],
  ])('are %s, just those whose loss is within the budget', (_title, onlyFull) => {
    const worths = fc.array(fc.integer({ min: 0, max: 30 }), { minLength: 4, maxLength: 4 });
    fc.assert(
      fc.property(smallProblem, worths, fc.integer({ min: 0, max: 40 }), (raw, worth, cents) => {
        const problem = normalize(raw);
        const { lengths, demands, kinds } = problem;
        const inParts = lengths.map((_, i) => (worth[i] ?? 0) * partsPerCent);
        const prices = { worth: inParts, rent: kinds.map(() => 0), boardRent: 0 };
        const wanted = { budget: cents * partsPerCent, onlyFull, most: 1e6 };
        const columns = listPatterns(problem, prices, wanted, { done: 0, limit: Infinity });
        const listed = Array.from(
          { length: columns?.size ?? 0 },
          (_, j) => `${columns?.kind[j]}: ${columns?.counts(j, lengths.length)}`,
        );
        const total = (counts: number[], of: readonly number[]) =>
          counts.reduce((sum, count, i) => sum + count * (of[i] ?? 0), 0);
        const expected = kinds.flatMap(({ room, cost, single }, k) =>
          everyChoice(demands)
            .filter(counts => counts.some(count => count > 0) && total(counts, lengths) <= room)
            .filter(
              counts =>
                !single ||
                total(
                  counts,
                  lengths.map(() => 1),
                ) === 1,
            )
            .filter(counts => cost - total(counts, worth) <= cents)
            .filter(counts => {
              const fits = (length: number, i: number) =>
                (counts[i] ?? 0) < (demands[i] ?? 0) && total(counts, lengths) + length <= room;
              return single || !onlyFull || !lengths.some(fits);
            })
            .map(counts => `${k}: ${counts}`),
        );
        expect(listed.sort()).toEqual(expected.sort());
      }),
      { numRuns: 200, seed: 1 },
    );
  });
});
