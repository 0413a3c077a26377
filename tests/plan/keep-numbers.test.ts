import { describe, expect, test } from 'vitest';
import { inches, toInches } from '../../src/measure/inch.js';
import { alongBoard } from '../../src/plan/board-bars.js';
import { turnsOf } from '../../src/plan/cutting-order.js';
import { unfoundAsTheyCome } from '../../src/plan/keep-numbers.js';
import { boardsPage } from '../../src/plan/pages/boards-page.js';
import { cutPage } from '../../src/plan/pages/cut-page.js';
import { pageLines } from '../../src/text/page-lines.js';
import { type RackInTest, rackPlan } from '../support/rack-plan.js';

function purchaseOf(about: RackInTest) {
  const [purchase] = rackPlan(about).plan.purchases;
  if (purchase === undefined) throw new Error('nothing is bought');
  return purchase;
}

/** 60 + 35 and 49 + 46 in, each pair out of 96 in with squaring and blade. */
const PAIRS: RackInTest = {
  pieces: [
    ['A', 60, 1],
    ['B', 49, 1],
    ['C', 46, 1],
    ['D', 35, 1],
  ],
  store: [[96, 748]],
};

/** Marks in the order in which they come to the saw. */
function turns(...marks: readonly string[]) {
  return turnsOf(marks.map((mark, at) => ({ mark, turn: at + 1 })));
}

describe('which board a piece is cut from', () => {
  // By hand: room 95-5/8 in. A leaves 35-1/2, B leaves 46-1/2 in. As they come, C takes 46 of those, and D fits the 35-1/2.
  test('does not matter where they come out of any board as it comes', () => {
    expect(unfoundAsTheyCome(purchaseOf(PAIRS), turns('A', 'B', 'C', 'D'))).toEqual([]);
  });

  // By hand: three of 30 in fill the first board, 31 + 31 + 29 in the second. Longest first, both of 31 in come out of
  // the first one, 90-1/4 - 2 x 31-1/8 = 28 in are left; three of 30 in leave 91-1/4 - 3 x 30-1/8 = 7/8 in of the second.
  test('matters where a short piece is taken from the board that a longer one needs', () => {
    const boards = [{ cuts: [30, 30, 30] }, { cuts: [31, 31, 29] }].map(({ cuts }, at) => ({
      number: at + 1,
      length: inches(cuts.reduce((sum, it) => sum + it, 0) + 3 / 8 + 2 / 8),
      onHand: false,
      cuts: cuts.map(it => ({ mark: `M${it}`, length: inches(it) })),
      offcut: 0,
      slack: 0,
    }));
    const purchase = { ...purchaseOf(PAIRS), boards };
    expect(
      unfoundAsTheyCome(purchase, turns('M31', 'M30', 'M29')).map(
        ({ mark, count }) => `${count} x ${mark}`,
      ),
    ).toEqual(['1 x M29']);
  });
});

// By hand: 48, then 1/8 in blade and 34-1/2 in more are 82-5/8 in.
test('marks on the tape have a blade between each two pieces', () => {
  const cuts = [{ length: inches(48) }, { length: inches(34.5) }];
  const pieces = alongBoard(cuts, { start: 0, kerf: inches(1 / 8) });
  expect(pieces.map(({ to }) => toInches(to))).toEqual([48, 82.625]);
  expect(pieces.map(({ from }) => toInches(from))).toEqual([0, 48.125]);
});

describe('the pages of boards and cuts', () => {
  const told = (about: RackInTest) => {
    const { plan } = rackPlan(about);
    return [boardsPage(plan), cutPage(plan)].map(page => pageLines(page, 80).join(' '));
  };

  // By hand: 96 - 3/8 - 2 x 47-3/4 - 1/8 in is nothing: no slack at all.
  test('name the board without slack, and what a spare costs', () => {
    const [boards] = told({
      pieces: [['A', 47.75, 2]],
      store: [
        [96, 748],
        [120, 998],
      ],
    });
    expect(boards).toContain('Board 1 has next to no slack');
    expect(boards).toContain('A spare would be 1 x 8 ft of 2x4, 7.48 more.');
  });

  test('say nothing of a spare where every board has slack, or an offcut would do', () => {
    const [roomy] = told({ pieces: [['A', 40, 2]], store: [[96, 748]] });
    expect(roomy).not.toContain('spare');
    const [offcut] = told({ pieces: [['A', 47.75, 3]], store: [[96, 748]] });
    expect(offcut).not.toContain('spare');
  });

  test('tell the squaring cut, the side of the blade, and the marks without a stop', () => {
    const [, cuts] = told({
      pieces: [
        ['A', 48, 1],
        ['B', 34.5, 1],
      ],
      store: [[96, 748]],
    });
    expect(cuts).toContain('First cut of each board: 1/4 in off its end to square it.');
    expect(cuts).toContain('to the side of the blade that faces it');
    expect(cuts).toContain('A 48, B 82-5/8 in');
  });
});
