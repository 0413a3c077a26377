import { COMMON_PRACTICE } from '../../src/measure/figure.js';
import type { Axis, Box, Model, Part } from '../../src/model/part.js';

/** A board as a test tells it: where it begins and ends, and what is left after notching. */
export type BoardInTest = {
  readonly id: string;
  readonly name?: string;
  readonly from: readonly [number, number, number];
  readonly to: readonly [number, number, number];
  /** Axis of the length; the longest side unless said otherwise. */
  readonly runs?: Axis;
  /** What is left after notching, as disjoint boxes; the whole board unless said otherwise. */
  readonly solid?: readonly Box[];
};

/** A box between two corners given as x, y, z. */
export function boxOf(
  from: readonly [number, number, number],
  to: readonly [number, number, number],
): Box {
  return {
    min: { x: from[0], y: from[1], z: from[2] },
    max: { x: to[0], y: to[1], z: to[2] },
  };
}

/** A part of the model; thickness and width are the two shorter sides. */
export function boardOf(board: BoardInTest): Part {
  const box = boxOf(board.from, board.to);
  const side = (axis: Axis) => box.max[axis] - box.min[axis];
  const byLength = (['x', 'y', 'z'] as const).toSorted((a, b) => side(b) - side(a));
  const runs = board.runs ?? byLength[0] ?? 'x';
  const across = byLength.filter(axis => axis !== runs);
  const [wide, thin] = [across[0] ?? 'y', across[1] ?? 'z'];
  return {
    id: board.id,
    path: board.id.replace(/\/[^.]*/g, ''),
    name: board.name ?? board.id,
    board: 'frame',
    section: {
      name: `${side(thin).toFixed(1)}x${side(wide).toFixed(1)}`,
      thickness: side(thin),
      width: side(wide),
      family: 'metric',
      sold: 'in a test',
      source: COMMON_PRACTICE,
    },
    runs,
    face: thin,
    length: side(runs),
    box,
    notches: [],
    solid: board.solid ?? [box],
    loose: false,
  };
}

/** A piece of these boards; contacts, joints and spreads are left out, drawings don't look at them. */
export function pieceOf(boards: readonly BoardInTest[]): Model {
  const parts = boards.map(boardOf);
  const least = (axis: Axis) => Math.min(0, ...parts.map(part => part.box.min[axis]));
  const most = (axis: Axis) => Math.max(0, ...parts.map(part => part.box.max[axis]));
  return {
    parts,
    contacts: [],
    joints: [],
    spreads: [],
    overall: boxOf([least('x'), least('y'), least('z')], [most('x'), most('y'), most('z')]),
  };
}
