import { boxRound } from '../drawing/sight.js';
import type { Patch, Stroke } from '../drawing/strokes.js';
import type { Mm } from '../measure/quantities.js';
import { drawLevel, drawUpright, isFree, type Sheet, setSign } from './canvas-sheet.js';

/** From mm on the paper to cells of the sheet. */
export type Setting = {
  readonly columnOf: (u: Mm) => number;
  readonly rowOf: (v: Mm) => number;
};

/** A shade that leaves the lines around it readable, and one that shows where there is no shade. */
const FILL = { unicode: '▒', ascii: ':' };
const DOT = { unicode: '·', ascii: '.' };

/** Sets strokes as joined lines, plain ones first so that what is bright stays bright where they meet. */
export function drawStrokes(sheet: Sheet, strokes: readonly Stroke[], setting: Setting): void {
  const seen = strokes.filter(one => one.kind !== 'hidden');
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

/**
 * Fills what is bright. A board without an inside, because there was no room to widen it, becomes a
 * bar in place of its first line instead; its other line stays, so that two bars don't run together.
 */
export function fillPatches(
  sheet: Sheet,
  patches: readonly Patch[],
  { setting, ascii }: { setting: Setting; ascii: boolean },
): void {
  const sign = ascii ? FILL.ascii : FILL.unicode;
  const blocks = patches.map(patch => blockOf(patch, setting));
  const withInside = new Set(blocks.filter(hasInside).map(block => block.part));
  for (const block of blocks) {
    const isBar = !withInside.has(block.part);
    for (let row = block.fromRow; row <= block.toRow; row += 1) {
      for (let column = block.fromColumn; column <= block.toColumn; column += 1) {
        const isSet = isBar && isInside(column, row, block);
        if (isSet || isFree(sheet, column, row)) setSign(sheet, { column, row }, sign);
      }
    }
  }
}

/** A patch in cells, its lines included. */
type Block = {
  readonly part: string;
  readonly fromColumn: number;
  readonly toColumn: number;
  readonly fromRow: number;
  readonly toRow: number;
};

function blockOf(patch: Patch, { columnOf, rowOf }: Setting): Block {
  const { u, v } = boxRound(patch.corners);
  return {
    part: patch.part,
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
