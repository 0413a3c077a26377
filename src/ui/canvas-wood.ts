import { boxRound } from '../drawing/sight.js';
import type { Drawing, Patch, Ring, Stroke } from '../drawing/strokes.js';
import type { Mm } from '../measure/quantities.js';
import { addFilled, type Filled } from './canvas-marks.js';
import { drawLevel, drawUpright, isFree, type Sheet, setSign, setText } from './canvas-sheet.js';

/** From mm on the paper to cells of the sheet. */
export type Setting = {
  readonly columnOf: (u: Mm) => number;
  readonly rowOf: (v: Mm) => number;
};

/** A shade that leaves the lines around it readable, and one that shows where there is no shade. */
export const FILL = { unicode: '▒', ascii: ':' };
const DOT = { unicode: '·', ascii: '.' };
/** What is no wood: other signs than those of edges, so that nobody takes it for one. */
const PHANTOM = { level: { unicode: '-', ascii: '~' }, upright: ':' };
/** A board that is broken off, row by row. */
const BREAK = ['/', '\\'];
const RING = 'o';
const SIGNED: ReadonlySet<Stroke['kind']> = new Set(['phantom', 'cutting-plane', 'break']);

/** Sets strokes as joined lines, plain ones first so that what is bright stays bright where they meet. */
export function drawStrokes(sheet: Sheet, strokes: readonly Stroke[], setting: Setting): void {
  const seen = strokes.filter(one => one.kind === 'visible');
  for (const bright of [false, true]) {
    for (const stroke of seen.filter(one => one.bright === bright)) {
      const { fromColumn, toColumn, fromRow, toRow } = ends(stroke, setting);
      if (stroke.from.v === stroke.to.v) {
        drawLevel(sheet, fromRow, { from: fromColumn, to: toColumn, bright });
      } else {
        drawUpright(sheet, fromColumn, { from: fromRow, to: toRow, bright });
      }
    }
  }
}

/** Dots along the outline of boards that cannot be seen, wherever the sheet is still free. */
export function drawHidden(
  sheet: Sheet,
  strokes: readonly Stroke[],
  { setting, ascii }: { setting: Setting; ascii: boolean },
): void {
  const sign = ascii ? DOT.ascii : DOT.unicode;
  for (const stroke of strokes.filter(one => one.kind === 'hidden')) {
    const { fromColumn, toColumn, fromRow, toRow } = ends(stroke, setting);
    for (let row = fromRow; row <= toRow; row += 1) {
      for (let column = fromColumn; column <= toColumn; column += 1) {
        if (isFree(sheet, column, row)) setSign(sheet, { column, row }, sign);
      }
    }
  }
}

/** Breaks, what is no wood, and screws seen from their heads. Middle lines are too fine for cells. */
export function drawSigns(
  sheet: Sheet,
  { strokes, rings }: Pick<Drawing, 'strokes' | 'rings'>,
  { setting, ascii }: { setting: Setting; ascii: boolean },
): void {
  for (const stroke of strokes) {
    if (!SIGNED.has(stroke.kind)) continue;
    const { fromColumn, toColumn, fromRow, toRow } = ends(stroke, setting);
    for (let row = fromRow; row <= toRow; row += 1) {
      for (let column = fromColumn; column <= toColumn; column += 1) {
        const sign =
          stroke.kind === 'break'
            ? (BREAK[(row + column) % 2] ?? '')
            : fromColumn === toColumn
              ? PHANTOM.upright
              : PHANTOM.level[ascii ? 'ascii' : 'unicode'];
        if (stroke.kind === 'break' || isFree(sheet, column, row)) {
          setSign(sheet, { column, row }, sign, stroke.bright);
        }
      }
    }
  }
  for (const ring of rings) {
    for (const place of ringCells(ring, setting)) setSign(sheet, place, RING, ring.bright);
  }
}

/** A screw has a cell of its own; a round thing larger than that, a sign for each step round it. */
function ringCells({ at: { u, v }, radius }: Ring, { columnOf, rowOf }: Setting) {
  const wide = columnOf(u + radius) - columnOf(u - radius);
  const high = rowOf(v - radius) - rowOf(v + radius);
  if (wide < SMALLEST_ROUND || high < SMALLEST_ROUND / 2) {
    return [{ column: columnOf(u), row: rowOf(v) }];
  }
  const steps = 2 * (wide + high);
  return Array.from({ length: steps }, (_, step) => {
    const turn = (step / steps) * 2 * Math.PI;
    return {
      column: columnOf(u + radius * Math.cos(turn)),
      row: rowOf(v + radius * Math.sin(turn)),
    };
  });
}

/** In fewer columns than this a circle is a blot; found by looking. */
const SMALLEST_ROUND = 6;

/** Words where they stand, and what is written on boards that have room for it. */
export function drawWords(
  sheet: Sheet,
  { labels, marks }: Pick<Drawing, 'labels' | 'marks'>,
  { columnOf, rowOf }: Setting,
): void {
  const ends = new Map<number, number>();
  for (const { text, at, bright } of labels) {
    const row = rowOf(at.v);
    const middle = columnOf(at.u) - Math.floor(text.length / 2);
    const column = Math.max(ends.get(row) ?? 0, middle);
    ends.set(row, column + text.length + 2);
    setText(sheet, { column, row }, { text, bright });
  }
  for (const { text, on, room, bright } of marks.filter(mark => !mark.bright)) {
    const [left, right] = [on.u - room.width / 2, on.u + room.width / 2].map(columnOf);
    const [top, low] = [on.v + room.height / 2, on.v - room.height / 2].map(rowOf);
    if (left === undefined || right === undefined || top === undefined || low === undefined)
      continue;
    if (right - left <= text.length || low - top < 2) continue;
    const column = Math.ceil((left + right - text.length) / 2);
    setText(sheet, { column, row: Math.floor((top + low) / 2) }, { text, bright });
  }
}

/**
 * Fills what is bright. A board without an inside, because there was no room to widen it, becomes a
 * bar in place of its first line instead; its other line stays, so that two bars don't run together.
 */
export function fillPatches(
  sheet: Sheet,
  patches: readonly Patch[],
  { setting, ascii, filled }: { setting: Setting; ascii: boolean; filled: Filled },
): void {
  const blocks = patches.map(patch => blockOf(patch, setting, ascii));
  const withInside = new Set(blocks.filter(hasInside).map(block => block.part));
  for (const block of blocks) {
    const isBar = !withInside.has(block.part);
    for (let row = block.fromRow; row <= block.toRow; row += 1) {
      for (let column = block.fromColumn; column <= block.toColumn; column += 1) {
        const isSet = isBar && isInside(column, row, block);
        if (!isSet && !isFree(sheet, column, row)) continue;
        setSign(sheet, { column, row }, block.sign);
        addFilled(filled, block.part, { column, row });
      }
    }
  }
}

/** A patch in cells, its lines included. */
type Block = {
  readonly part: string;
  readonly sign: string;
  readonly fromColumn: number;
  readonly toColumn: number;
  readonly fromRow: number;
  readonly toRow: number;
};

/** What is being added is shaded; what is cut through and waste is hatched. */
function signOf({ look, lean }: Patch, ascii: boolean): string {
  if (look !== 'added') return lean === 'right' ? '/' : '\\';
  return ascii ? FILL.ascii : FILL.unicode;
}

function blockOf(patch: Patch, { columnOf, rowOf }: Setting, ascii: boolean): Block {
  const { u, v } = boxRound(patch.corners);
  return {
    part: patch.part,
    sign: signOf(patch, ascii),
    fromColumn: columnOf(u.from),
    toColumn: columnOf(u.to),
    fromRow: rowOf(v.to),
    toRow: rowOf(v.from),
  };
}

function hasInside({ fromColumn, toColumn, fromRow, toRow }: Block): boolean {
  return toColumn - fromColumn >= 2 && toRow - fromRow >= 2;
}

function isInside(column: number, row: number, block: Block): boolean {
  return (
    isBetween(column, block.fromColumn, block.toColumn) &&
    isBetween(row, block.fromRow, block.toRow)
  );
}

/** Between two lines, or on the first of them where there is nothing between. */
function isBetween(cell: number, from: number, to: number): boolean {
  return to - from < 2 ? cell === from : cell > from && cell < to;
}

function ends(stroke: Stroke, { columnOf, rowOf }: Setting) {
  const columns = [columnOf(stroke.from.u), columnOf(stroke.to.u)];
  const rows = [rowOf(stroke.from.v), rowOf(stroke.to.v)];
  return {
    fromColumn: Math.min(...columns),
    toColumn: Math.max(...columns),
    fromRow: Math.min(...rows),
    toRow: Math.max(...rows),
  };
}
