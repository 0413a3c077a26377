import type { Mm } from '../measure/quantities.js';
import { bounds } from '../model/box.js';
import type { Box, Part } from '../model/part.js';

/** The free room of a box: from wall to wall, and from its floor to its rim. */
export type Room = {
  readonly x: readonly [Mm, Mm];
  readonly y: readonly [Mm, Mm];
  readonly floor: Mm;
  readonly rim: Mm;
};

/**
 * The room between the fixed boards of a box, above its loose floor: the nearest boards on all four
 * sides that cross the middle. Undefined where a side is open.
 * @example an 18 x 18 in box of 1-1/2 in walls // 15 x 15 in
 */
export function roomIn(parts: readonly Part[], blocks: readonly Part[]): Room | undefined {
  const walls = parts.filter(({ loose }) => !loose).map(({ box }) => box);
  const outside = bounds(walls);
  const floors = parts.filter(part => part.loose && !blocks.includes(part));
  if (outside === undefined || floors.length === 0) return undefined;
  const floor = Math.max(...floors.map(({ box }) => box.max.z));
  const above = walls.filter(({ max }) => max.z > floor);
  const x = between(above, 'x', 'y', outside);
  const y = between(above, 'y', 'x', outside);
  if (x === undefined || y === undefined) return undefined;
  return { x, y, floor, rim: outside.max.z };
}

function between(
  walls: readonly Box[],
  axis: 'x' | 'y',
  across: 'x' | 'y',
  { min, max }: Box,
): readonly [Mm, Mm] | undefined {
  const middle = (min[axis] + max[axis]) / 2;
  const side = (min[across] + max[across]) / 2;
  const crossing = walls.filter(wall => wall.min[across] < side && wall.max[across] > side);
  const before = crossing.map(wall => wall.max[axis]).filter(at => at <= middle);
  const behind = crossing.map(wall => wall.min[axis]).filter(at => at >= middle);
  if (before.length === 0 || behind.length === 0) return undefined;
  return [Math.max(...before), Math.min(...behind)];
}
