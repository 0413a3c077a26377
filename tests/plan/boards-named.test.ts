import { expect, test } from 'vitest';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { inches } from '../../src/measure/inch.js';
import { boardsNamed, numbered } from '../../src/plan/boards-named.js';
import { markLine } from '../../src/plan/cut-steps.js';
import { knotLines } from '../../src/plan/knot-room.js';

const REST = { name: 'the rest of board 3' };

// As a lead would call them out to the helper at the stack.
test.each([
  [[numbered(7)], 'board 7'],
  [[8, 9].map(numbered), 'boards 8 and 9'],
  [[3, 4, 5, 6].map(numbered), 'boards 3 to 6'],
  [[1, 3, 4, 5, 9].map(numbered), 'boards 1, 3 to 5 and 9'],
  [[REST, ...[4, 5, 6].map(numbered)], 'the rest of board 3 and boards 4 to 6'],
  [[numbered(2), REST, numbered(4)], 'board 2, the rest of board 3 and board 4'],
])('%o are called %s', (boards, words) => {
  expect(boardsNamed(boards)).toBe(words);
});

test('where twelve feet come from is told by their count, not board by board', () => {
  const from = [...[3, 4, 5, 6].map(number => [1, number]), [3, 2], [5, 7]].map(
    ([count = 0, number = 0]) => ({ count, ...numbered(number) }),
  );
  expect(markLine({ mark: 'J', name: 'Foot' }, { count: 12, left: 12, from }).text).toBe(
    '12 x foot: 1 each from boards 3 to 6; 3 from board 2; 5 from board 7',
  );
});

test('room for knots is told by its length, and where there is none', () => {
  const boards = [3.125, 1 / 16, 1 / 16, 1.875, 1.875].map((room, at) => ({
    ...numbered(at + 1),
    slack: inches(room),
  }));
  expect(knotLines(boards, SIXTEENTHS).map(({ text }) => text)).toEqual([
    'room to cut them out, in all: 3-1/8 in on board 1; 1-7/8 in each on boards 4 and 5; none on boards 2 and 3',
  ]);
});
