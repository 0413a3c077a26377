import type { DimensionLine } from '../drawing/strokes.js';
import { addJoin, EAST, NORTH, type Sheet, SOUTH, setText, WEST } from './canvas-sheet.js';

type Side = DimensionLine['side'];

/** A dimension line in cells, counted from the first column and row of the sheet's drawing area. */
export type CellDimension = {
  readonly line: DimensionLine;
  /** First and last cell along its direction: columns rightward, rows downward. */
  readonly from: number;
  readonly to: number;
};

/** A dimension with its row outward and the place of its number. */
export type PlacedDimension = CellDimension & { readonly row: number; readonly textAt: number };

/** Free cells between the wood and its dimensions. */
const AIR = 1;
/** Both ticks and a blank at each side of the number. */
const ROUND_TEXT = 4;
/** Between a number beside its line and whatever comes next. */
const BLANK = 1;

/** Room along a direction in which numbers may stand, relative to the drawing area. */
export type Reach = { readonly from: number; readonly to: number };

/**
 * Gives each dimension a row in which it meets no other, its own row first, then farther out. Two of
 * a chain share the cell where they touch. A dimension whose number fits nowhere is left out.
 */
export function placeDimensions(
  dimensions: readonly CellDimension[],
  reach: Reach,
): readonly PlacedDimension[] {
  const placed: PlacedDimension[] = [];
  const inward = [...dimensions].sort((a, b) => a.line.row - b.line.row);
  for (const dimension of inward) {
    for (let row = dimension.line.row; row < dimension.line.row + dimensions.length; row += 1) {
      const others = placed.filter(one => one.line.side === dimension.line.side && one.row === row);
      const found = textPlaces(dimension)
        .map(textAt => ({ ...dimension, row, textAt }))
        .find(one => isWithin(one, reach) && !others.some(other => collide(one, other)));
      if (found === undefined) continue;
      placed.push(found);
      break;
    }
  }
  return placed;
}

/** Where the number of a dimension may begin: within the line, or beside it when it is too short. */
function textPlaces({ line, from, to }: CellDimension): readonly number[] {
  if (line.along === 'v') return [Math.ceil((from + to) / 2)];
  const cells = to - from + 1;
  const length = line.text.length;
  if (length + ROUND_TEXT <= cells) return [from + Math.floor((cells - length) / 2)];
  return [to + 2, from - 1 - length];
}

/** The cells a dimension takes along its direction. */
function extent(one: PlacedDimension): Reach {
  if (one.line.along === 'v') return { from: one.from, to: one.to };
  const textTo = one.textAt + one.line.text.length - 1;
  return {
    from: one.textAt < one.from ? one.textAt - BLANK : one.from,
    to: textTo > one.to ? textTo + BLANK : one.to,
  };
}

function isWithin(one: PlacedDimension, reach: Reach): boolean {
  if (one.line.along === 'v') return true;
  return one.textAt >= reach.from && one.textAt + one.line.text.length - 1 <= reach.to;
}

function collide(a: PlacedDimension, b: PlacedDimension): boolean {
  const [one, other] = [extent(a), extent(b)];
  if (one.from > other.to || other.from > one.to) return false;
  // Touching end to end, both with a tick there, they make a chain.
  const chained =
    (one.from === other.to && one.from === a.from && other.to === b.to) ||
    (one.to === other.from && one.to === a.to && other.from === b.from);
  return !chained || one.from === one.to || other.from === other.to;
}

/** Cells that the dimensions on one side need outward from the drawing. */
export function depthOf(side: Side, placed: readonly PlacedDimension[]): number {
  const here = placed.filter(one => one.line.side === side);
  if (here.length === 0) return 0;
  const rows = 1 + Math.max(...here.map(one => one.row));
  if (side === 'above' || side === 'below') return AIR + rows;
  return Array.from({ length: rows }, (_, row) => AIR + columnWidth(here, row)).reduce(
    (sum, width) => sum + width,
  );
}

function columnWidth(here: readonly PlacedDimension[], row: number): number {
  return Math.max(1, ...here.filter(one => one.row === row).map(textDepth));
}

/** An upright line has its number on it, or beside its tick when there is no cell between the ticks. */
function textDepth({ line, from, to }: PlacedDimension): number {
  return to - from >= 2 ? line.text.length : line.text.length + 2;
}

export type Area = {
  readonly left: number;
  readonly top: number;
  readonly columns: number;
  readonly rows: number;
};

/** Draws all dimensions around the drawing area. */
export function drawDimensions(sheet: Sheet, placed: readonly PlacedDimension[], area: Area): void {
  for (const one of placed) {
    if (one.line.along === 'u') drawBeyondRows(sheet, one, area);
    else drawBeyondColumns(sheet, one, { area, placed });
  }
}

function drawBeyondRows(sheet: Sheet, one: PlacedDimension, area: Area): void {
  const row =
    one.line.side === 'below' ? area.top + area.rows + AIR + one.row : area.top - 1 - AIR - one.row;
  const { bright, text } = one.line;
  const [from, to] = [area.left + one.from, area.left + one.to];
  for (let column = from; column <= to; column += 1) {
    const ends = column === from || column === to ? NORTH | SOUTH : 0;
    const joins = ends | (column > from ? WEST : 0) | (column < to ? EAST : 0);
    addJoin(sheet, { column, row }, { joins, bright });
  }
  const isWithin = one.textAt > one.from && one.textAt < one.to;
  const words = isWithin ? ` ${text} ` : text;
  const column = area.left + one.textAt - (isWithin ? 1 : 0);
  setText(sheet, { column, row }, { text: words, bright });
}

function drawBeyondColumns(
  sheet: Sheet,
  one: PlacedDimension,
  { area, placed }: { area: Area; placed: readonly PlacedDimension[] },
): void {
  const here = placed.filter(other => other.line.side === one.line.side);
  const inner = here.filter(other => other.row < one.row);
  const out = AIR + depthOf(one.line.side, inner);
  const isLeft = one.line.side === 'left';
  const column = isLeft ? area.left - 1 - out : area.left + area.columns + out;
  const { bright, text } = one.line;
  const [from, to] = [area.top + one.from, area.top + one.to];
  for (let row = from; row <= to; row += 1) {
    const ends = row === from || row === to ? EAST | WEST : 0;
    const joins = ends | (row > from ? NORTH : 0) | (row < to ? SOUTH : 0);
    addJoin(sheet, { column, row }, { joins, bright });
  }
  const onLine = one.to - one.from >= 2;
  const start = isLeft ? column + 1 - text.length - (onLine ? 0 : 2) : column + (onLine ? 0 : 2);
  setText(sheet, { column: start, row: area.top + one.textAt }, { text, bright });
}
