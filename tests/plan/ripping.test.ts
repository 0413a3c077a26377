import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { COMPUTED } from '../../src/measure/figure.js';
import { inches, toInches } from '../../src/measure/inch.js';
import type { CutRow, Purchase } from '../../src/plan/plan.js';
import { purchases } from '../../src/plan/purchases.js';
import { rippedBoards } from '../../src/plan/ripped-boards.js';
import { ripWay, USUAL_RIP } from '../../src/plan/ripping.js';
import { type Setting, settingOf } from '../../src/plan/setting.js';
import { referenceRows } from '../support/reference-rows.js';

const size = (thickness: number, width: number) => ({
  thickness: inches(thickness),
  width: inches(width),
});

describe('strips out of one board', () => {
  const square = { kerf: inches(1 / 8), edge: 0 };

  // Source: sums on paper in inches, dressed sizes of PS 20; the edge takes 1/8 and a blade of 1/8.
  test.each(
    referenceRows('sum on paper: strips out of a board', [
      // 1/4 + 2 x 1-1/2 + 1/8 = 3-3/8 of 3-1/2.
      ['two 1x2 out of a 1x4', [0.75, 1.5], [0.75, 3.5], USUAL_RIP, 2, 1.5, false],
      // 1/4 + 3 x 1-1/2 + 2/8 = 5 of 5-1/2.
      ['three 1x2 out of a 1x6', [0.75, 1.5], [0.75, 5.5], USUAL_RIP, 3, 1.5, false],
      // 1/4 + 4 x 1-1/2 + 3/8 = 6-5/8 of 7-1/4.
      ['four 1x2 out of a 1x8', [0.75, 1.5], [0.75, 7.25], USUAL_RIP, 4, 1.5, false],
      // Slices of 3/4 off the 3-1/2 face: 1/4 + 3 x 3/4 + 2/8 = 2-3/4; a fourth would take 3-5/8.
      ['three 3/4 slices off a 2x4', [0.75, 1.5], [1.5, 3.5], USUAL_RIP, 3, 0.75, true],
      // 4 x 3/4 + 3/8 = 3-3/8 where the edge is straight already.
      ['four where the edge is straight', [0.75, 1.5], [1.5, 3.5], square, 4, 0.75, true],
      // Two of 1-3/4 fill 3-1/2, and the blade spoils it.
      ['one where the blade spoils two', [0.75, 1.75], [0.75, 3.5], square, 1, 1.75, false],
      // 1/4 + 1-1/2 = 1-3/4 of 2-1/2.
      ['one 2x2 out of a 2x3', [1.5, 1.5], [1.5, 2.5], USUAL_RIP, 1, 1.5, false],
    ] as const),
  )('%s', (_, strip, board, cut, strips, fence, turned) => {
    const way = ripWay(size(strip[0], strip[1]), size(board[0], board[1]), cut);
    expect(way?.strips).toBe(strips);
    expect(toInches(way?.fence ?? 0)).toBeCloseTo(fence, 9);
    expect(way?.turned).toBe(turned);
  });

  test.each([
    ['thinner than any side of the board', size(0.5, 1.25), size(1.5, 3.5)],
    ['wider than the board', size(0.75, 3.5), size(0.75, 3.5)],
  ])('none where the strip is %s', (_, strip, board) => {
    expect(ripWay(strip, board, USUAL_RIP)).toBeUndefined();
  });
});

test('the strips fit across the board, and one more would not', () => {
  const quarters = (from: number, to: number) =>
    fc.integer({ min: from * 4, max: to * 4 }).map(n => n / 4);
  fc.assert(
    fc.property(
      quarters(5, 120),
      quarters(20, 300),
      fc.constantFrom(1, 2.5, 3.25),
      fc.constantFrom(0, 3),
      (fence, width, kerf, edge) => {
        const board = { thickness: 18, width };
        const strips = ripWay({ thickness: 18, width: fence }, board, { kerf, edge })?.strips ?? 0;
        const across = (n: number) => (edge > 0 ? edge + kerf : 0) + n * fence + (n - 1) * kerf;
        if (strips > 0) expect(across(strips)).toBeLessThanOrEqual(width);
        expect(across(strips + 1)).toBeGreaterThan(width);
      },
    ),
  );
});

describe('whole boards to rip', () => {
  const ends = { trimStart: 0, trimEnd: 0 };
  const problem = {
    kerf: 0,
    pieces: [{ id: 'a', length: 50, count: 5 }],
    stock: [
      { id: 'long', length: 100, cost: 428, ...ends },
      { id: 'short', length: 60, cost: 318, ...ends },
    ],
  };

  // Source: sum on paper: a strip of 100 holds two of 50, so five take three strips, two boards of two strips:
  // 8.56. One long and one short board hold 2 x 2 + 2 x 1 = 6 for 7.46, and nothing of two boards is cheaper
  // but two short ones, which hold four.
  test('are counted whole, and the last may be a shorter one', () => {
    const found = rippedBoards(problem, 2, 10_000);
    expect(found?.cost).toBe(746);
    expect([...(found?.boards ?? [])]).toEqual([
      ['long', 1],
      ['short', 1],
    ]);
    expect(found?.lowerBound).toBeLessThanOrEqual(746);
  });

  test('are not offered where they cost as much as the strips', () => {
    expect(rippedBoards(problem, 2, 746)).toBeUndefined();
  });

  test('are not offered for pieces longer than any of them', () => {
    const pieces = [{ id: 'a', length: 101, count: 1 }];
    expect(rippedBoards({ ...problem, pieces }, 2, 10_000)).toBeUndefined();
  });
});

const figure = (value: number) => ({ value, unit: 'mm', because: '', source: COMPUTED }) as const;

function row(mark: string, length: number, count: number, section: string): CutRow {
  const width = section === '1x2' ? 1.5 : 3.5;
  return {
    mark,
    name: mark,
    uses: [],
    pieces: [],
    section,
    width: figure(inches(width)),
    thickness: figure(inches(0.75)),
    length: figure(inches(length)),
    count,
    turn: 1,
    notches: [],
  };
}

function setting(given: Partial<Setting>): Setting {
  return { ...settingOf({}, SIXTEENTHS), ...given };
}

const offer = (section: string, feet: number, cents?: number) => {
  const length = inches(12 * feet);
  return cents === undefined ? { section, length } : { section, length, cents };
};

/** Six keeper strips of 40 in: two to a strip of 8 ft, so three strips. */
const KEEPERS = row('K', 40, 6, '1x2');

function keepers(given: Partial<Setting>, rows: readonly CutRow[] = [KEEPERS]): Purchase {
  const found = purchases(rows, setting(given)).find(({ section }) => section === '1x2');
  if (found === undefined) throw new Error('no strips');
  return found;
}

describe('keeper strips', () => {
  // Source: sum on paper: three 1x2 at 2.98 are 8.94; two 1x4 give four strips for 8.56.
  test('are ripped out of 1x4 where that costs less, and nothing else changes', () => {
    const offers = [offer('1x2', 8, 298), offer('1x4', 8, 428)];
    const found = keepers({ offers });
    expect(found.cost.value).toBe(856);
    expect(found.ripped?.from).toBe('1x4');
    expect(found.ripped?.strips).toBe(2);
    expect(found.ripped?.bought.value).toBe(894);
    expect(found.buy.map(({ count, each }) => [count, each.value])).toEqual([[2, 428]]);
    expect(found.boards.map(board => board.cuts.map(({ mark }) => mark))).toEqual([
      ['K', 'K'],
      ['K', 'K'],
      ['K', 'K'],
    ]);
    const slat = row('S', 20, 3, '1x4');
    const [alone] = purchases([slat], setting({ offers }));
    const together = purchases([slat, KEEPERS], setting({ offers })).at(0);
    expect(together).toEqual(alone);
  });

  test('say how to set the fence, who rips, and what to buy without the saw', () => {
    const words = keepers({ offers: [offer('1x2', 8, 298), offer('1x4', 8, 428)] }).ripped?.words;
    expect(words).toEqual([
      'Rip 1x4, 2 of 8 ft, into 2 strips each: 8.56 instead of 8.94 for 1x2.',
      'Take 1/8 in off one edge first; then the fence stands at 1-1/2 in. Each cut takes 1/8 in. Cut to length after ripping.',
      'Lead only, on a table saw: it has a step of its own, before the crosscuts. Without one buy 1x2.',
    ]);
  });

  // Source: sums on paper: two 1x4 at 4.48 are 8.96, one 2x4 at 4.48 gives three strips for 4.48.
  test.each([
    ['as dear', [offer('1x2', 8, 298), offer('1x4', 8, 447)], undefined, 894],
    ['dearer', [offer('1x2', 8, 298), offer('1x4', 8, 448)], undefined, 894],
    [
      'the cheapest of several',
      [offer('1x2', 8, 298), offer('1x4', 8, 428), offer('2x4', 8, 448)],
      '2x4',
      448,
    ],
    ['strips without a price', [offer('1x2', 8), offer('1x4', 8, 428)], undefined, 0],
    ['boards without a price', [offer('1x2', 8, 298), offer('1x4', 8)], undefined, 894],
    [
      'one length without a price',
      [offer('1x2', 8, 298), offer('1x4', 8, 428), offer('1x4', 6)],
      undefined,
      894,
    ],
    [
      'boards that strips do not come out of',
      [offer('1x2', 8, 298), offer('5/4x4', 8, 100)],
      undefined,
      894,
    ],
    ['no prices at all', [], undefined, 0],
  ])('%s', (_, offers, from, cost) => {
    const found = keepers({ offers });
    expect(found.ripped?.from).toBe(from);
    expect(found.cost.value).toBe(cost);
  });

  // Source: sum on paper: two strips on hand hold four of the six; one 1x2 at 2.98 beats one 1x4 at 4.28.
  test('on hand are used first', () => {
    const onHand = [{ section: '1x2', length: inches(96), count: 2 }];
    const found = keepers({ offers: [offer('1x2', 8, 298), offer('1x4', 8, 428)], onHand });
    expect([found.cost.value, found.ripped]).toEqual([298, undefined]);
  });
});
