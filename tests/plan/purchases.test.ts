import { describe, expect, test } from 'vitest';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { COMPUTED } from '../../src/measure/figure.js';
import { inches, toInches } from '../../src/measure/inch.js';
import type { CutRow } from '../../src/plan/plan.js';
import { purchases } from '../../src/plan/purchases.js';
import { type Setting, settingOf } from '../../src/plan/setting.js';

const figure = (value: number) => ({ value, unit: 'mm', because: '', source: COMPUTED }) as const;

function row(mark: string, length: number, count: number, section = '2x4'): CutRow {
  return {
    mark,
    name: mark,
    uses: [],
    pieces: [],
    section,
    width: figure(inches(3.5)),
    thickness: figure(inches(1.5)),
    length: figure(length),
    count,
    turn: 1,
    notches: [],
  };
}

function setting(given: Partial<Setting>): Setting {
  return { ...settingOf({}, SIXTEENTHS), ...given };
}

const offer = (length: number, cents?: number) =>
  cents === undefined ? { section: '2x4', length } : { section: '2x4', length, cents };

describe('kerf and squaring are never forgotten', () => {
  // Source: field case F07, arithmetic: 3 x 1000 + 2 x 3 = 3006 mm do not come out of 3000 mm.
  test('three pieces of 1 m do not come out of one length of 3 m', () => {
    const saw = { ...setting({}).saw, kerf: { ...setting({}).saw.kerf, value: 3 } };
    const [bought] = purchases(
      [row('A', 1000, 3)],
      setting({ trim: 0, saw, offers: [offer(3000)] }),
    );
    expect(bought?.boards.length).toBe(2);
  });

  // Source: field case F07: all three of 998 mm do fit, 3 x 998 + 2 x 3 = 3000, the first end being square.
  test('three pieces of 998 mm need a board with room for the squaring cut too', () => {
    const saw = { ...setting({}).saw, kerf: { ...setting({}).saw.kerf, value: 3 } };
    const [tight] = purchases([row('A', 998, 3)], setting({ trim: 0, saw, offers: [offer(3000)] }));
    const [roomy] = purchases([row('A', 998, 3)], setting({ trim: 0, saw, offers: [offer(3003)] }));
    expect([tight?.boards.length, roomy?.boards.length]).toEqual([2, 1]);
  });

  // Source: field case F08: two of 48 in take two boards of 8 ft, or one of 10 ft, which leaves
  // 120 - 1/4 - 1/8 - 96 - 1/8 = 23-1/2 in before the last parting cut, 23-3/8 in after it.
  test('two pieces of 48 in take a 10 ft board rather than two of 8 ft', () => {
    const [bought] = purchases(
      [row('A', inches(48), 2)],
      setting({ offers: [offer(inches(96)), offer(inches(120))] }),
    );
    expect(bought?.boards.map(board => toInches(board.length))).toEqual([120]);
    expect(toInches(bought?.boards[0]?.offcut ?? 0)).toBeCloseTo(23.375, 2);
  });

  // Source: field case F09: 4 x 21 and a cut before each, 4 x 1/8, leave 96 - 84-1/2 = 11-1/2 in of
  // freedom to start further in; here the squaring takes 1/4 in of it.
  test('four drawer fronts of 21 in leave 11-1/4 in of slack in 8 ft after squaring', () => {
    const [bought] = purchases([row('A', inches(21), 4)], setting({ offers: [offer(inches(96))] }));
    const [board] = bought?.boards ?? [];
    expect(toInches(board?.slack ?? 0)).toBeCloseTo(11.25, 2);
  });

  test('a piece longer than every board is named, and nothing else is lost', () => {
    const [bought] = purchases(
      [row('A', inches(100), 1), row('B', inches(40), 2)],
      setting({ offers: [offer(inches(96))] }),
    );
    expect(bought?.missing).toEqual(['1 of A, 100 in: longer than every board after squaring']);
    expect(bought?.boards.flatMap(board => board.cuts.map(cut => cut.mark))).toEqual(['B', 'B']);
  });
});

describe('prices and boards on hand', () => {
  // Source: arithmetic: two 8 ft at 7.48 are 14.96; one 10 ft at 9.98 is less.
  test('the cheaper board wins, whatever its length', () => {
    const offers = [offer(inches(96), 748), offer(inches(120), 998)];
    const [bought] = purchases([row('A', inches(48), 2)], setting({ offers }));
    expect(bought?.cost.value).toBe(998);
    expect(bought?.priced).toBe(true);
  });

  test('a board that is there already is used before one is bought', () => {
    const [bought] = purchases(
      [row('A', inches(40), 1)],
      setting({
        offers: [offer(inches(96), 748)],
        onHand: [{ section: '2x4', length: inches(52), count: 1 }],
      }),
    );
    expect(bought?.boards.map(board => board.onHand)).toEqual([true]);
    expect(bought?.cost.value).toBe(0);
    expect(bought?.buy).toEqual([]);
  });

  test('one price missing makes the section unpriced rather than half-priced', () => {
    const [bought] = purchases(
      [row('A', inches(40), 1)],
      setting({ offers: [offer(inches(96), 748), offer(inches(120))] }),
    );
    expect(bought?.priced).toBe(false);
  });
});

// Source: what fits a car, common practice; PS 20 lengths in whole feet.
test('without offers no board over 12 ft is planned unless a piece needs it', () => {
  const [short] = purchases([row('A', inches(30), 40)], setting({}));
  const [long] = purchases([row('A', inches(150), 1)], setting({}));
  expect(
    Math.max(...(short?.boards ?? []).map(board => toInches(board.length))),
  ).toBeLessThanOrEqual(144);
  expect(toInches(long?.boards[0]?.length ?? 0)).toBeGreaterThan(150);
});
