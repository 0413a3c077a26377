import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { inches, toInches } from '../../src/measure/inch.js';
import { numbered } from '../../src/plan/boards-named.js';
import { heldByClamps, inSawOrder } from '../../src/plan/cutting-order.js';
import { holdLines } from '../../src/plan/hold-lines.js';
import type { Plan } from '../../src/plan/plan.js';
import { rackNow } from '../../src/plan/rack-now.js';
import { cutStepsOf } from '../../src/plan/work-so-far.js';
import { rangeCorners } from '../../src/recipe/range-corners.js';
import { planOf, project } from '../support/projects.js';
import { parting, type RackInTest, rackPlan, spoiling } from '../support/rack-plan.js';

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
    const stops = [48, 15, 3.5, 11.5].map(it => ({
      section: '2x4',
      length: { value: inches(it) },
    }));
    const order = inSawOrder(stops, stop => stop).map(({ length }) => toInches(length.value));
    expect(order.map(it => Math.round(it * 2) / 2)).toEqual([11.5, 3.5, 48, 15]);
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

/**
 * The lead at the saw with every board: at each stop the pieces that the step names come off the squared end of the
 * boards. Where the picture of a board shows another piece next, the picture and the saw are not of one mind.
 */
function offTheEnd({ steps, cutList, purchases }: Plan): readonly string[] {
  const boards = purchases.flatMap(({ section, boards }) =>
    boards.map(({ number, cuts }) => ({ section, number, rest: [...cuts] })),
  );
  const wrong: string[] = [];
  for (const { step, section, rows } of cutStepsOf({ steps, cutList })) {
    for (const mark of new Set(rows.map(row => row.mark))) {
      for (const { number, rest } of boards.filter(it => it.section === section)) {
        while (rest.some(cut => cut.mark === mark)) {
          const next = rest.shift();
          if (next?.mark !== mark)
            wrong.push(
              `${step.title}: on board ${number} of ${section} ${next?.mark} lies before ${mark}`,
            );
        }
      }
    }
  }
  return wrong;
}

describe('a board as it is drawn and as it is sawn', () => {
  const recipe = project('planter-bench');

  test('is the same: end posts of 11-1/2 in stood before feet of 3-1/2 in that are sawn first', () => {
    expect(offTheEnd(planOf(recipe))).toEqual([]);
  });

  test('is the same at the ends of the ranges', () => {
    const corners = rangeCorners(recipe).filter((_, at) => at % 31 === 0);
    expect(corners.length).toBeGreaterThan(5);
    for (const answers of corners)
      expect(offTheEnd(planOf(recipe, answers)), JSON.stringify(answers)).toEqual([]);
  });

  // Eight feet of 8 in, rails, and slats of 30 in: the feet are sawn first of their boards, also of those that come new.
  test('is the same after slips and bad boards', () => {
    const about: RackInTest = {
      pieces: [
        ['A', 45, 4],
        ['B', 30, 7],
        ['C', 8, 8],
      ],
      store: [[96, 748]],
    };
    const { plan, setting } = rackPlan(about);
    const slip = fc.record({
      cut: fc.record({ 8: fc.integer({ min: 0, max: 8 }), 45: fc.integer({ min: 0, max: 3 }) }),
      mark: fc.constantFrom(['A', 45] as const, ['B', 30] as const, ['C', 8] as const),
      bad: fc.option(
        fc.record({ place: fc.integer({ min: 0, max: 4 }), from: fc.integer({ min: 5, max: 60 }) }),
      ),
    });
    fc.assert(
      fc.property(slip, ({ cut, mark: [mark, length], bad }) => {
        const spoiled = spoiling(cut, { mark, length, left: 0 });
        const work = bad === null ? spoiled : parting(cut, { ...bad, to: bad.from + 8 }, spoiled);
        const boards = rackNow('2x4', { plan, work, setting })?.rack.boards ?? [];
        for (const { cuts } of boards) {
          const marks = cuts.map(it => it.mark).join('');
          expect(marks).toMatch(/^C*A*B*$/);
        }
      }),
      { numRuns: 60 },
    );
  });

  test('every turn of the cut list is there once, and the stops come in it', () => {
    const { cutList, sawOrder } = planOf(recipe);
    const turns = sawOrder.flatMap(({ marks }) =>
      marks.map(({ mark }) => cutList.find(row => row.mark === mark)?.turn),
    );
    expect(turns).toEqual(cutList.map((_, at) => at + 1));
  });
});

describe('the list at the saw and the steps', () => {
  // Two pages that tell another order would send the lead back to a stop that was moved.
  test('tell the stops in one order', () => {
    const { sawOrder, steps } = planOf(project('planter-bench'), {});
    const sawn = steps.filter(({ phase, tally }) => phase === 'cut' && tally?.of === 'piece');
    expect(sawn.length).toBeGreaterThan(8);
    const told = sawOrder.map(({ section, length }) => `${section}@${length.value.toFixed(2)}`);
    expect(told).toEqual(sawn.map(({ id }) => id.split('/').slice(1).join('/')));
  });
});
