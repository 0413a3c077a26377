import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exchangePieces } from '../../../src/solve/cutting/exchange.js';
import { costOf, fillGreedily, type Use, wholeProblem } from '../../../src/solve/cutting/greedy.js';
import { normalize, type ReducedProblem } from '../../../src/solve/cutting/normalize.js';
import { settingsOf, withoutExcess } from '../../../src/solve/cutting/settings.js';
import { smallProblem } from './small-problems.js';

function reduced(pieces: readonly (readonly [number, number])[], room: number): ReducedProblem {
  const board = { id: 'board', length: room, cost: 100, trimStart: 0, trimEnd: 0 };
  return normalize({
    pieces: pieces.map(([length, count], place) => ({ id: `piece ${place}`, length, count })),
    stock: [board],
    kerf: 0,
  });
}

const use = (counts: readonly number[], times: number): Use => ({
  pattern: { kind: 0, counts },
  times,
});

// Worked by hand.
describe('stop settings of a plan', () => {
  it('are one for each different length on each group of boards cut alike', () => {
    expect(settingsOf([use([1, 1], 5), use([2, 0], 3), use([0, 4], 1)])).toBe(4);
  });

  it('do not count pieces cut in excess, dropped where the fewest boards are cut alike', () => {
    const problem = reduced(
      [
        [60, 3],
        [40, 3],
      ],
      100,
    );
    const uses = withoutExcess(problem, [use([1, 1], 3), use([0, 2], 1)]);
    expect(uses).toEqual([use([1, 1], 3)]);
  });
});

describe('exchanging pieces between boards', () => {
  it('needs a setting less where four boards are cut in two ways, and leaves the longer offcut', () => {
    const problem = reduced(
      [
        [40, 4],
        [30, 4],
        [20, 4],
      ],
      100,
    );
    const mixed = [use([2, 0, 1], 2), use([0, 2, 1], 2)];
    expect(settingsOf(mixed)).toBe(4);
    expect(exchangePieces(problem, mixed)).toEqual([use([2, 0, 0], 2), use([0, 2, 2], 2)]);
  });

  it('leaves 20 on one board in place of 10 on each, for a setting more, when the offcut comes first', () => {
    const problem = reduced(
      [
        [50, 2],
        [30, 2],
        [20, 2],
      ],
      110,
    );
    const even = [use([1, 1, 1], 2)];
    expect(settingsOf(exchangePieces(problem, even, 'settings'))).toBe(3);
    const uneven = [use([1, 2, 0], 1), use([1, 0, 2], 1)];
    expect(exchangePieces(problem, even, 'offcut')).toEqual(uneven);
  });

  it('keeps cost, boards and pieces, fits, and never needs more settings', () => {
    fc.assert(
      fc.property(smallProblem, problem => {
        const whole = normalize(problem);
        const uses = fillGreedily(whole, wholeProblem(whole));
        const given = exchangePieces(whole, uses);
        const sum = (i: number) =>
          given.reduce((all, { pattern, times }) => all + times * (pattern.counts[i] ?? 0), 0);
        expect(whole.lengths.map((_, i) => sum(i))).toEqual(whole.demands);
        expect(costOf(whole, given)).toBe(costOf(whole, withoutExcess(whole, uses)));
        for (const { pattern } of given) {
          const load = pattern.counts.reduce((all, n, i) => all + n * (whole.lengths[i] ?? 0), 0);
          expect(load).toBeLessThanOrEqual(whole.kinds[pattern.kind]?.room ?? 0);
        }
        expect(settingsOf(given)).toBeLessThanOrEqual(settingsOf(withoutExcess(whole, uses)));
      }),
      { numRuns: 300, seed: 3 },
    );
  });
});
