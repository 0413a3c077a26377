import fc from 'fast-check';
import type { Box } from '../../src/model/part.js';
import { type BoardInTest, boxOf, pieceOf } from './boards.js';

/** Whole sizes from 1 to 12: points on halves then lie clear of every edge. */
const box = fc
  .tuple(
    fc.tuple(fc.nat(11), fc.nat(11), fc.nat(11)),
    fc.tuple(
      fc.integer({ min: 1, max: 5 }),
      fc.integer({ min: 1, max: 5 }),
      fc.integer({ min: 1, max: 5 }),
    ),
  )
  .map(([from, size]) => boxOf(from, [from[0] + size[0], from[1] + size[1], from[2] + size[2]]));

function overlaps(a: Box, b: Box): boolean {
  return (['x', 'y', 'z'] as const).every(
    axis => a.min[axis] < b.max[axis] && b.min[axis] < a.max[axis],
  );
}

/** Boards of one or two boxes, none in another's place; some are being added. */
export const scene = fc
  .array(fc.record({ box, joinsLast: fc.boolean(), isBright: fc.boolean() }), {
    minLength: 1,
    maxLength: 14,
  })
  .map(wished => {
    const boxes: Box[] = [];
    const parts: { solid: Box[]; isBright: boolean }[] = [];
    for (const wish of wished) {
      if (boxes.some(other => overlaps(other, wish.box))) continue;
      boxes.push(wish.box);
      const last = parts.at(-1);
      if (wish.joinsLast && last !== undefined && last.solid.length < 2) last.solid.push(wish.box);
      else parts.push({ solid: [wish.box], isBright: wish.isBright });
    }
    const boards: BoardInTest[] = parts.map(({ solid }, i) => ({
      id: `board/${i}`,
      from: [0, 0, 0],
      to: [1, 1, 1],
      solid,
    }));
    const bright = parts.flatMap((part, i) => (part.isBright ? [`board/${i}`] : []));
    return { model: pieceOf(boards), bright: new Set(bright) };
  });
