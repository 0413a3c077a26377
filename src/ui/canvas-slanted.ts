import { boxRound } from '../drawing/sight.js';
import type { Drawing, Mark, PaperPoint, Patch, Stroke } from '../drawing/strokes.js';
import type { CellPicture } from './canvas.js';
import { addFilled, type CellAt, type Filled, placeMarks } from './canvas-marks.js';
import { emptySheet, isFree, type Sheet, setSign, sheetLines } from './canvas-sheet.js';
import { drawArrows, drawLabels } from './canvas-slanted-signs.js';

type Room = { readonly columns: number; readonly rows: number };

/** From mm on the paper to cells, with fractions: columns rightward, rows upward from the lowest. */
export type Slope = { readonly across: number; readonly up: number; readonly rows: number };

/**
 * Level edges rise by one row in four columns, so that their signs repeat without a jolt: then a cell is
 * taken to be 2.3 times as high as wide, where fonts have 1.8 to 2.2.
 */
const ROWS_PER_COLUMN = 1 / 4;
/** On the paper they rise by 30 degrees. */
const RISE = Math.tan(Math.PI / 6);

/** Signs of a rising line from the foot of a cell to its head. */
const LEVELS = ['_', '.', '-', "'"] as const;
const FILL = { unicode: '▒', ascii: ':' };
const UPRIGHT = { unicode: '│', ascii: '|' };

/** Of a line that runs into others, more than this share has to be free for it to be drawn. */
const FREE = 1 / 2;

/**
 * Sets a corner view in cells: upright edges as lines, level ones as steps of four signs to the row. What
 * is being added goes first and is filled; an edge that would run into those there already is left out.
 */
export function setSlanted(
  drawing: Drawing,
  room: Room,
  { ascii }: { readonly ascii: boolean },
): CellPicture {
  const slope = slopeFor(drawing, room);
  const columns = Math.min(room.columns, Math.ceil(drawing.width * slope.across) + 1);
  const sheet = emptySheet(room.columns, slope.rows);
  const kind = ascii ? 'ascii' : 'unicode';
  const seen = drawing.strokes.filter(stroke => stroke.kind === 'visible');
  const longFirst = [...seen].sort(
    (a, b) => Number(b.bright) - Number(a.bright) || lengthOf(b) - lengthOf(a),
  );
  const taken: Taken = { upright: new Set(), slanted: new Set() };
  const left = longFirst.filter(
    stroke => !drawStroke(sheet, stroke, { slope, taken, sign: UPRIGHT[kind] }),
  );
  const filled: Filled = new Map();
  fill(sheet, drawing.patches, { slope, sign: FILL[kind], columns, filled });
  for (const stroke of drawing.strokes.filter(it => it.kind === 'hidden')) {
    // Every other sign of a line that is seen: dots are the ways of boards.
    for (const [at, cell] of cellsOf(stroke, slope).entries()) {
      if (at % 2 === 1 || !isFree(sheet, cell.column, cell.row)) continue;
      setSign(sheet, cell, isUpright(stroke) ? UPRIGHT[kind] : (LEVELS[cell.level] ?? '-'));
    }
  }
  for (const stroke of drawing.strokes.filter(it => it.kind === 'phantom')) {
    drawPhantom(sheet, stroke, slope);
  }
  drawLabels(sheet, drawing.labels, slope);
  drawArrows(sheet, drawing.arrows, { slope, ascii });
  const cellOf = ({ on }: Mark) => cellAt(on, slope);
  placeMarks(sheet, drawing.marks, { filled, fill: FILL[kind], ascii, cellOf });
  const leftOut = sumOf(left) / Math.max(1, sumOf(longFirst));
  return {
    lines: sheetLines(sheet, ascii),
    toScale: false,
    leftOut,
    ...(leftOut < FEW ? {} : { note: 'Some edges left out.' }),
  };
}

/** Less than this share of all edges may be left out without a word. */
const FEW = 0.15;

function sumOf(strokes: readonly Stroke[]): number {
  return strokes.reduce((sum, stroke) => sum + lengthOf(stroke), 0);
}

function slopeFor({ width, height }: Drawing, { columns, rows }: Room): Slope {
  const perColumn = ROWS_PER_COLUMN / RISE;
  const across = Math.min((columns - 1) / width, (rows - 1) / (height * perColumn));
  const up = across * perColumn;
  return { across, up, rows: Math.min(rows, Math.floor(height * up) + 1) };
}

function lengthOf({ from, to }: Stroke): number {
  return Math.hypot(to.u - from.u, to.v - from.v);
}

/** The cell that a place lies in. */
function cellAt({ u, v }: PaperPoint, slope: Slope): CellAt {
  return { column: Math.round(u * slope.across), row: slope.rows - 1 - Math.floor(v * slope.up) };
}

type Signed = CellAt & { readonly level: number };

/** The cells of a line, and how high in each it runs, in quarters. Rows count downward. */
export function cellsOf(
  { from, to }: Pick<Stroke, 'from' | 'to'>,
  slope: Slope,
): readonly Signed[] {
  if (isUpright({ from, to })) return uprightCells({ from, to }, slope);
  const [a, b] = from.u < to.u ? [from, to] : [to, from];
  const [first, last] = [a.u * slope.across, b.u * slope.across].map(Math.round);
  if (first === undefined || last === undefined) return [];
  const perColumn = ((b.v - a.v) * slope.up) / ((b.u - a.u) * slope.across);
  return Array.from({ length: last - first + 1 }, (_, i) => {
    // Half a column in, where the sign stands.
    const up = a.v * slope.up + (first + i - a.u * slope.across) * perColumn;
    const quarters = Math.floor(up * LEVELS.length + 1 / 2);
    const row = Math.floor(quarters / LEVELS.length);
    return { column: first + i, row: slope.rows - 1 - row, level: quarters - row * LEVELS.length };
  });
}

function isUpright({ from, to }: Pick<Stroke, 'from' | 'to'>): boolean {
  return Math.abs(from.u - to.u) < 1e-6;
}

/** Every cell that it runs through for half its height at least. */
function uprightCells({ from, to }: Pick<Stroke, 'from' | 'to'>, slope: Slope): readonly Signed[] {
  const column = Math.round(from.u * slope.across);
  const [low, high] = [from.v, to.v].map(v => v * slope.up).sort((a, b) => a - b);
  if (low === undefined || high === undefined) return [];
  const first = Math.floor(low + 1 / 2);
  const after = Math.max(first + 1, Math.floor(high + 1 / 2));
  return Array.from({ length: after - first }, (_, i) => ({
    column,
    row: slope.rows - 1 - (first + i),
    level: 0,
  }));
}

/** Cells that have upright and slanted lines already. */
type Taken = { readonly upright: Set<string>; readonly slanted: Set<string> };

type Pen = { readonly slope: Slope; readonly taken: Taken; readonly sign: string };

/** Draws a stroke unless it runs into others of its direction; false where it is left out. */
function drawStroke(sheet: Sheet, stroke: Stroke, { slope, taken, sign }: Pen): boolean {
  const cells = cellsOf(stroke, slope);
  const key = ({ column, row }: CellAt) => `${column} ${row}`;
  const upright = isUpright(stroke);
  const isFreeAt = (cell: CellAt) =>
    upright ? !taken.upright.has(key(cell)) : !taken.slanted.has(key(cell));
  if (cells.filter(isFreeAt).length <= cells.length * FREE) return false;
  for (const cell of cells) {
    if (!isFreeAt(cell)) continue;
    if (upright) {
      taken.upright.add(key(cell));
      setSign(sheet, cell, sign, stroke.bright);
    } else {
      taken.slanted.add(key(cell));
      if (!taken.upright.has(key(cell)))
        setSign(sheet, cell, LEVELS[cell.level] ?? '-', stroke.bright);
    }
  }
  return true;
}

/** What is no wood has other signs than edges where it is steep, so that nobody takes it for one. */
const STEEP = ':';

/** A stroke of any slope, over what is there: it is drawn off its place, before the wood. */
function drawPhantom(sheet: Sheet, { from, to, bright }: Stroke, slope: Slope): void {
  const [wide, high] = [(to.u - from.u) * slope.across, (to.v - from.v) * slope.up];
  if (Math.abs(wide) >= Math.abs(high)) {
    for (const cell of cellsOf({ from, to }, slope)) {
      setSign(sheet, cell, LEVELS[cell.level] ?? '-', bright);
    }
    return;
  }
  const middle = (from.u + to.u) / 2;
  const upright = { from: { u: middle, v: from.v }, to: { u: middle, v: to.v } };
  for (const cell of uprightCells(upright, slope)) setSign(sheet, cell, STEEP, bright);
}

type Filling = {
  readonly slope: Slope;
  readonly sign: string;
  readonly columns: number;
  readonly filled: Filled;
};

/** Free cells whose middle lies on what is being added. */
function fill(sheet: Sheet, patches: readonly Patch[], filling: Filling): void {
  const { slope, sign, columns, filled } = filling;
  for (const { part, corners } of patches) {
    const { u, v } = boxRound(corners);
    const top = Math.max(0, slope.rows - 1 - Math.floor(v.to * slope.up));
    const low = Math.min(slope.rows - 1, slope.rows - 1 - Math.floor(v.from * slope.up));
    const left = Math.max(0, Math.floor(u.from * slope.across));
    const right = Math.min(columns - 1, Math.ceil(u.to * slope.across));
    for (let row = top; row <= low; row += 1) {
      const middle = (slope.rows - 1 - row + 1 / 2) / slope.up;
      for (let column = left; column <= right; column += 1) {
        if (!isFree(sheet, column, row)) continue;
        if (!isOn(corners, { u: column / slope.across, v: middle })) continue;
        setSign(sheet, { column, row }, sign);
        addFilled(filled, part, { column, row });
      }
    }
  }
}

/** Corners go round to the left. */
function isOn(corners: readonly PaperPoint[], { u, v }: PaperPoint): boolean {
  return corners.every((a, i) => {
    const b = corners[(i + 1) % corners.length] ?? a;
    return (b.u - a.u) * (v - a.v) - (b.v - a.v) * (u - a.u) >= 0;
  });
}
