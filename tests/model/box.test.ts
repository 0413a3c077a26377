import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bounds, boxAt, contains, intersect, subtract, volume } from '../../src/model/box.js';
import { mirror, quarterTurn, translate, turnAxis } from '../../src/model/turn.js';
import { corners, cubes, smallBoxes } from './boards.js';

const sum = (
  boxes: readonly {
    min: { x: number; y: number; z: number };
    max: { x: number; y: number; z: number };
  }[],
) => boxes.reduce((total, box) => total + volume(box), 0);

test('a box less another and what they share make the whole box', () => {
  fc.assert(
    fc.property(smallBoxes, smallBoxes, (a, b) => {
      const common = intersect(a, b);
      expect(sum(subtract(a, b)) + (common === undefined ? 0 : volume(common))).toBe(volume(a));
    }),
  );
});

test('what is left of a box is just the cubes that the other does not fill', () => {
  fc.assert(
    fc.property(smallBoxes, smallBoxes, (a, b) => {
      const gone = cubes([b]);
      const expected = [...cubes([a])].filter(cube => !gone.has(cube)).sort();
      const left = subtract(a, b);
      expect([...cubes(left)].sort()).toEqual(expected);
      // As many cubes as volume: the boxes do not overlap.
      expect(sum(left)).toBe(expected.length);
    }),
  );
});

test('boxes that only touch share nothing and take nothing from each other', () => {
  const a = corners([0, 0, 0], [2, 2, 2]);
  const b = corners([2, 0, 0], [4, 2, 2]);
  expect(intersect(a, b)).toBeUndefined();
  expect(subtract(a, b)).toEqual([a]);
});

test('a notch a billionth of a mm off leaves no shaving behind', () => {
  const board = corners([0, 0, 0], [100, 10, 10]);
  const notch = corners([1e-9, 0, 5], [20, 10 - 1e-9, 10 + 1e-9]);
  expect(subtract(board, notch)).toHaveLength(2);
});

test.each([
  // Counterclockwise seen from above: what looked to +x looks to +y after one turn.
  [0, corners([1, 2, 3], [4, 6, 8])],
  [1, corners([-6, 1, 3], [-2, 4, 8])],
  [2, corners([-4, -6, 3], [-1, -2, 8])],
  [3, corners([2, -4, 3], [6, -1, 8])],
] as const)('%d quarter turns carry a box where they carry its corners', (turns, expected) => {
  expect(quarterTurn(corners([1, 2, 3], [4, 6, 8]), turns)).toEqual(expected);
});

test('turns and mirrors keep the volume, and undo each other', () => {
  fc.assert(
    fc.property(
      smallBoxes,
      fc.constantFrom('x' as const, 'y' as const, 'z' as const),
      (box, axis) => {
        expect(volume(quarterTurn(box, 1))).toBe(volume(box));
        expect(quarterTurn(quarterTurn(box, 1), 3)).toEqual(box);
        expect(quarterTurn(quarterTurn(box, 2), 2)).toEqual(box);
        expect(mirror(mirror(box, axis), axis)).toEqual(box);
      },
    ),
  );
});

test('an axis turns with its board, and the upright one stays', () => {
  expect([turnAxis('x', 1), turnAxis('y', 3), turnAxis('x', 2), turnAxis('z', 1)]).toEqual([
    'y',
    'x',
    'x',
    'z',
  ]);
});

test('the bounds of boxes hold each of them and touch on every side', () => {
  const boxes = [
    boxAt({ x: 0, y: 5, z: 1 }, { x: 2, y: 1, z: 1 }),
    boxAt({ x: 1, y: 2, z: 0 }, { x: 4, y: 1, z: 1 }),
  ];
  const around = bounds(boxes);
  expect(around).toEqual(corners([0, 2, 0], [5, 6, 2]));
  expect(boxes.every(box => contains(corners([0, 2, 0], [5, 6, 2]), box))).toBe(true);
  expect(bounds([])).toBeUndefined();
  expect(translate(corners([0, 0, 0], [1, 1, 1]), { x: 1, y: 2, z: 3 })).toEqual(
    corners([1, 2, 3], [2, 3, 4]),
  );
});
