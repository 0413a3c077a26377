import { describe, expect, test } from 'vitest';
import { drawBoards } from '../../src/drawing/boards-drawing.js';
import { MILLIMETERS } from '../../src/measure/displays.js';
import { COMPUTED } from '../../src/measure/figure.js';
import type { BoughtBoard, Purchase } from '../../src/plan/plan.js';

function figure(value: number) {
  return { value, unit: 'mm' as const, because: '', source: COMPUTED };
}

function board(number: number, lengths: readonly number[]): BoughtBoard {
  const cuts = lengths.map(length => ({ mark: length > 300 ? 'A' : 'B', length }));
  return { number, length: 3000, onHand: false, cuts, offcut: 379, slack: 380 };
}

/** Two boards cut alike and one of its own, 100 wide; the blade takes 3, squaring 15. */
const PURCHASE: Purchase = {
  section: '40x100',
  width: figure(100),
  thickness: figure(40),
  boards: [board(1, [1000, 1000, 200]), board(2, [1000, 1000, 200]), board(3, [1000, 500])],
  buy: [],
  priced: false,
  cost: figure(0),
  proof: { kind: 'none', words: '' },
  missing: [],
  kerf: 3,
  trim: 15,
};

describe('boards as bars', () => {
  const drawing = drawBoards(PURCHASE, MILLIMETERS);

  test('are to scale, boards that are cut alike once', () => {
    expect(drawing.width).toBe(3000);
    const marks = drawing.marks.map(({ text }) => text);
    // A piece of 200 on a board 100 wide has no room for its length.
    expect(marks).toEqual(['A 1000 mm', 'A 1000 mm', 'B', 'A 1000 mm', 'A 500 mm']);
    expect(drawing.notes).toEqual([
      'Dark lines are what the blade takes, 3 mm each.',
      'B is 200 mm.',
    ]);
  });

  test('have their pieces in order, a blade between each two', () => {
    // Squaring takes 15, the blade 3, so the first piece lies from 18 to 1018 and the next from 1021.
    const blades = drawing.patches
      .map(({ corners }) => corners.map(({ u }) => u))
      .map(us => `${Math.min(...us)} to ${Math.max(...us)}`);
    expect(blades.slice(0, 5)).toEqual([
      '0 to 15',
      '15 to 18',
      '1018 to 1021',
      '2021 to 2024',
      '2224 to 2227',
    ]);
    expect(drawing.marks[0]?.on.u).toBe(518);
  });

  test('say what is left, and that it is true for both boards', () => {
    expect(drawing.labels[0]?.text).toMatch(/^Board 1-2: 2 x .*; offcut 379 mm, slack 380 mm$/);
  });
});
