import fc from 'fast-check';
import { expect, test } from 'vitest';
import { inches } from '../../src/measure/inch.js';
import { inBoardFrame } from '../../src/model/frame-of-board.js';
import type { Axis, Box, Part } from '../../src/model/part.js';
import { mirrorSignature, signature } from '../../src/model/signature.js';
import { mirror, quarterTurn, turnAxis } from '../../src/model/turn.js';
import { corners, part } from './boards.js';

/** A rail of 100 x 4 x 2 with one notch in a corner of its upper edge, which has a left and a right hand. */
const HANDED = board([corners([10, 0, 2], [14, 1, 4])]);

function board(notches: readonly Box[]): Part {
  return part('b', corners([0, 0, 0], [100, 2, 4]), { notches });
}

function mapped(of: Part, way: (box: Box) => Box, axis: (axis: Axis) => Axis): Part {
  return part(of.id, way(of.box), {
    runs: axis(of.runs),
    face: axis(of.face),
    notches: of.notches.map(notch => way(notch.box)),
  });
}

const same = (axis: Axis) => axis;

/** x to y to z to x: carries a board to another axis without mirroring it. */
function rolled(of: Part): Part {
  const point = (p: Box['min']) => ({ x: p.z, y: p.x, z: p.y });
  const next: Record<Axis, Axis> = { x: 'y', y: 'z', z: 'x' };
  return mapped(
    of,
    box => ({ min: point(box.min), max: point(box.max) }),
    axis => next[axis],
  );
}

test.each([
  [
    'quarter turns',
    mapped(
      HANDED,
      box => quarterTurn(box, 1),
      axis => turnAxis(axis, 1),
    ),
  ],
  ['half turns about the upright axis', mapped(HANDED, box => quarterTurn(box, 2), same)],
  ['end for end', mapped(HANDED, box => mirror(mirror(box, 'x'), 'z'), same)],
  ['turning over', mapped(HANDED, box => mirror(mirror(box, 'y'), 'z'), same)],
  ['another axis of the piece', rolled(HANDED)],
  ['a third axis of the piece', rolled(rolled(HANDED))],
])('%s make no other piece', (_, turned) => {
  expect(signature(turned)).toBe(signature(HANDED));
});

test.each([
  ['x', mapped(HANDED, box => mirror(box, 'x'), same)],
  ['y', mapped(HANDED, box => mirror(box, 'y'), same)],
  ['z', mapped(HANDED, box => mirror(box, 'z'), same)],
])('a mirror across %s makes the other hand', (_, other) => {
  expect(signature(other)).not.toBe(signature(HANDED));
  expect(signature(other)).toBe(mirrorSignature(HANDED));
  expect(mirrorSignature(other)).toBe(signature(HANDED));
});

test('a notch through the whole thickness has no hand', () => {
  const plain = board([corners([10, 0, 2], [14, 2, 4])]);
  expect(mirrorSignature(plain)).toBe(signature(plain));
});

test('a longer board, and a notch elsewhere, are other pieces', () => {
  const longer = part('b', corners([0, 0, 0], [101, 2, 4]));
  expect(signature(longer)).not.toBe(signature(board([])));
  expect(signature(board([corners([10, 0, 2], [14, 2, 4])]))).not.toBe(
    signature(board([corners([11, 0, 2], [15, 2, 4])])),
  );
});

test('a square section may also lie on its other faces', () => {
  const square = (notch: Box) => part('s', corners([0, 0, 0], [100, 4, 4]), { notches: [notch] });
  expect(signature(square(corners([10, 0, 2], [14, 4, 4])))).toBe(
    signature(square(corners([10, 2, 0], [14, 4, 4]))),
  );
});

test('it does not matter in how many cuts the wood was taken away', () => {
  const cut = fc.integer({ min: 11, max: 89 });
  fc.assert(
    fc.property(cut, fc.integer({ min: 1, max: 3 }), (x, z) => {
      const whole = board([corners([10, 0, 0], [90, 2, 3])]);
      const along = board([corners([10, 0, 0], [x, 2, 3]), corners([x, 0, 0], [90, 2, 3])]);
      const deep = board([corners([10, 0, 0], [90, 2, z]), corners([10, 0, 0], [90, 2, 3])]);
      expect(signature(along)).toBe(signature(whole));
      expect(signature(deep)).toBe(signature(whole));
    }),
  );
});

test('notches of sixteenths do not depend on which end they are measured from', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 512 }), fc.integer({ min: 1, max: 64 }), (at, long) => {
      const end = inches(48);
      const from = inches(at / 32);
      const to = inches((at + long) / 32);
      const near = part('n', corners([0, 0, 0], [end, 38.1, 88.9]), {
        notches: [corners([from, 0, 0], [to, 38.1, 44.45])],
      });
      const far = part('f', corners([7, 0, 0], [7 + end, 38.1, 88.9]), {
        notches: [corners([7 + end - to, 0, 44.45], [7 + end - from, 38.1, 88.9])],
      });
      expect(signature(far)).toBe(signature(near));
    }),
  );
});

test('in the frame of a board lengths run from one end, widths from an edge', () => {
  const post = part('post', corners([10, 20, 30], [14, 22, 130]), { runs: 'z', face: 'y' });
  const box = inBoardFrame(post, corners([10, 21, 30], [11, 22, 40]));
  // Up, right, away from you follow each other as x, y and z do: the frame stays as it is.
  expect(box).toEqual({
    along: { from: 0, to: 10 },
    across: { from: 0, to: 1 },
    through: { from: 1, to: 2 },
  });
});
