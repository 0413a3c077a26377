import type { Arrow, Label } from '../drawing/strokes.js';
import type { CellAt } from './canvas-marks.js';
import { type Sheet, setSign, setText } from './canvas-sheet.js';
import { cellsOf, type Slope } from './canvas-slanted.js';

type Heads = {
  readonly up: string;
  readonly down: string;
  readonly left: string;
  readonly right: string;
  readonly way: string;
};

/** Heads that every font has, and plain ones. */
export const ARROW_HEADS: Readonly<Record<'unicode' | 'ascii', Heads>> = {
  unicode: { up: '▲', down: '▼', left: '◄', right: '►', way: '·' },
  ascii: { up: '^', down: 'v', left: '<', right: '>', way: '.' },
};

/** The way of each board to its place as dots with a head, and the words of an arrow beside its head. */
export function drawArrows(
  sheet: Sheet,
  arrows: readonly Arrow[],
  { slope, ascii }: { readonly slope: Slope; readonly ascii: boolean },
): void {
  const heads = ARROW_HEADS[ascii ? 'ascii' : 'unicode'];
  for (const arrow of arrows) {
    const cells = cellsOf(arrow, slope);
    const toEnd = isForward(arrow) ? cells : [...cells].reverse();
    const last = toEnd.at(-1);
    if (last === undefined) continue;
    for (const cell of toEnd.slice(0, -1)) setSign(sheet, cell, heads.way);
    setSign(sheet, last, headOf(arrow, heads));
    if (arrow.text !== '')
      setText(sheet, beside(last, arrow.text, sheet), { text: arrow.text, bright: false });
  }
}

/** Cells come from left to right, and upright ones from below. */
function isForward({ from, to }: Arrow): boolean {
  return Math.abs(from.u - to.u) < 1e-6 ? from.v < to.v : from.u < to.u;
}

function headOf({ from, to }: Arrow, heads: Heads): string {
  if (Math.abs(from.u - to.u) < 1e-6) return from.v < to.v ? heads.up : heads.down;
  return from.u < to.u ? heads.right : heads.left;
}

/** To the right of a place, or to its left where the sheet ends. */
function beside({ column, row }: CellAt, text: string, sheet: Sheet): CellAt {
  const right = column + 2;
  if (right + text.length <= sheet.columns) return { column: right, row };
  return { column: Math.max(0, column - 1 - text.length), row };
}

/** Words in the middle of their places. */
export function drawLabels(sheet: Sheet, labels: readonly Label[], slope: Slope): void {
  for (const { text, at, bright } of labels) {
    const column = Math.round(at.u * slope.across - text.length / 2);
    const row = slope.rows - 1 - Math.floor(at.v * slope.up);
    setText(sheet, { column, row }, { text, bright });
  }
}
