import { describe, expect, test } from 'vitest';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { inches } from '../../src/measure/inch.js';
import { numbered } from '../../src/plan/boards-named.js';
import { heldByClamps, inCuttingOrder } from '../../src/plan/cutting-order.js';
import { holdLines } from '../../src/plan/hold-lines.js';
import { planOf, project } from '../support/projects.js';

const KERF = inches(1 / 8);

const piece = (length: number) => ({ mark: String(length), length: inches(length) });
const row = (lengths: readonly number[], left: number) => ({
  cuts: lengths.map(piece),
  left: inches(left),
});

// Manuals of miter saws: hands stay 6-3/8 in from the blade, and a piece that brings one nearer is too small to be
// held; the same manuals have short pieces cut off a long board. 12 in for a hand beside the cut is the program's own.
describe('in what order a board is cut', () => {
  test('feet of 3-1/2 in come off a board of 10 ft before the rails, and a rail is left at last', () => {
    const cuts = [48, 15, 15, 3.5, 3.5, 11.5].map(piece);
    expect(inCuttingOrder(cuts).map(({ mark }) => mark)).toEqual([
      ...['11.5', '3.5', '3.5'],
      ...['48', '15', '15'],
    ]);
  });

  test('a rail at last has to be clamped nowhere, however little is left behind it', () => {
    expect(heldByClamps(row([3.5, 3.5, 48, 15], 1 / 8), KERF)).toEqual([]);
  });

  test('feet behind the last rail leave nothing to hold: the last four of 3-1/2 in, with 1/2 in left', () => {
    // Behind each: 1/2; 1/2 + 3-5/8 = 4-1/8; 7-3/4; 11-3/8; then 15 in, which can be held.
    expect(heldByClamps(row([48, 3.5, 3.5, 3.5, 3.5, 3.5, 3.5], 0.5), KERF)).toEqual([3, 4, 5, 6]);
  });

  test('the last piece is parted from nothing where the board ends with it', () => {
    // Strips of 8 in: 8 in are behind the second last, 16-1/8 in behind the one before it.
    expect(heldByClamps(row([8, 8, 8], 0), KERF)).toEqual([1]);
  });

  test('a foot of board left behind the last one is enough', () => {
    expect(heldByClamps(row([8, 8, 8], 12), KERF)).toEqual([]);
  });
});

describe('what is said at the stop', () => {
  test('how many of which board are clamped', () => {
    const boards = [
      { ...numbered(1), ...row([8, 8, 8], 0) },
      { ...numbered(2), ...row([8, 8, 8], 12) },
    ];
    expect(holdLines(boards, new Set(['8']), { kerf: KERF, display: SIXTEENTHS })).toEqual([
      {
        name: 'Clamp',
        text: 'the last piece on board 1: under 12 in is left to hold',
        boards: true,
      },
    ]);
  });

  test('nothing where every rest can be held', () => {
    const boards = [{ ...numbered(1), ...row([3.5, 48], 1) }];
    expect(holdLines(boards, new Set(['3.5']), { kerf: KERF, display: SIXTEENTHS })).toEqual([]);
  });
});

describe('the bench', () => {
  const { steps, purchases } = planOf(project('planter-bench'));

  test('its pot blocks and feet are cut while the boards are long', () => {
    const cutting = steps.filter(({ id }) => id.startsWith('cut-'));
    const feet = cutting.findIndex(({ id }) => id.startsWith('cut-feet'));
    const rails = cutting.findIndex(({ title }) => title.includes('seat rails'));
    expect(feet).toBeGreaterThanOrEqual(0);
    expect(feet).toBeLessThan(rails);
  });

  test.each(purchases.map(it => [it.section, it] as const))(
    '%s: pieces of a foot and more come last on every board',
    (_, { boards }) => {
      for (const { cuts } of boards) {
        const firstLong = cuts.findIndex(({ length }) => length >= inches(12));
        const after = firstLong < 0 ? [] : cuts.slice(firstLong);
        expect(after.filter(({ length }) => length < inches(12))).toEqual([]);
      }
    },
  );
});

describe('the list at the saw and the steps', () => {
  // Two pages that tell another order would send the lead back to a stop that was moved.
  test('tell the stops in one order', () => {
    const { sawOrder, steps } = planOf(project('planter-bench'), {});
    const sawn = steps.filter(({ phase, tally }) => phase === 'cut' && tally !== undefined);
    expect(sawn.length).toBeGreaterThan(8);
    const told = sawOrder.map(({ section, length }) => `${section}@${length.value.toFixed(2)}`);
    expect(told).toEqual(sawn.map(({ id }) => id.split('/').slice(1).join('/')));
  });
});
