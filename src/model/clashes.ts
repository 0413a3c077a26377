import type { CubicMm } from '../measure/quantities.js';
import { SAME } from '../measure/tolerance.js';
import { bounds, intersect, volume } from './box.js';
import { type BoxTable, boxTable, cell, orderBy } from './box-table.js';
import type { Box, Part } from './part.js';

/** Two boards in the same place: one of them needs a notch, or stands wrong. */
export type Clash = {
  readonly a: string;
  readonly b: string;
  /** Box around everything that both fill. */
  readonly where: Box;
  readonly volume: CubicMm;
};

/**
 * All pairs of parts whose wood fills the same space, in the order of the parts. Two 2x4s that cross on
 * edge without a notch share 1-1/2 x 1-1/2 x 3-1/2 in.
 */
export function clashesOf(parts: readonly Part[]): readonly Clash[] {
  const table = boxTable(parts.map(part => part.solid));
  const byPair = new Map<number, Box[]>();
  for (const [low, high] of overlappingRows(table)) {
    const a = Math.min(cell(table.owner, low), cell(table.owner, high));
    const b = Math.max(cell(table.owner, low), cell(table.owner, high));
    const common = intersect(rowBox(table, low), rowBox(table, high));
    if (common === undefined) continue;
    const key = a * parts.length + b;
    byPair.set(key, [...(byPair.get(key) ?? []), common]);
  }
  return [...byPair.entries()]
    .sort(([a], [b]) => a - b)
    .flatMap(([key, common]) => clash(parts, key, common));
}

function clash(parts: readonly Part[], key: number, common: readonly Box[]): readonly Clash[] {
  const a = parts[Math.floor(key / parts.length)];
  const b = parts[key % parts.length];
  const where = bounds(common);
  if (a === undefined || b === undefined || where === undefined) return [];
  const shared = common.reduce((sum, box) => sum + volume(box), 0);
  return [{ a: a.id, b: b.id, where, volume: shared }];
}

/** Rows of different parts that overlap, found by walking along x. */
function overlappingRows(table: BoxTable): readonly (readonly [number, number])[] {
  const found: (readonly [number, number])[] = [];
  const rows = orderBy(table.min.x);
  rows.forEach((row, i) => {
    const end = cell(table.max.x, row) - SAME;
    for (let j = i + 1; j < rows.length; j += 1) {
      const other = cell(rows, j);
      if (cell(table.min.x, other) >= end) break;
      if (cell(table.owner, row) === cell(table.owner, other)) continue;
      if (overlapsAcross(table, row, other)) found.push([row, other]);
    }
  });
  return found;
}

function overlapsAcross(table: BoxTable, a: number, b: number): boolean {
  const { min, max } = table;
  return (
    cell(max.y, a) - cell(min.y, b) > SAME &&
    cell(max.y, b) - cell(min.y, a) > SAME &&
    cell(max.z, a) - cell(min.z, b) > SAME &&
    cell(max.z, b) - cell(min.z, a) > SAME
  );
}

function rowBox(table: BoxTable, row: number): Box {
  const { min, max } = table;
  return {
    min: { x: cell(min.x, row), y: cell(min.y, row), z: cell(min.z, row) },
    max: { x: cell(max.x, row), y: cell(max.y, row), z: cell(max.z, row) },
  };
}
