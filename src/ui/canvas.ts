import type { Drawing, Mark } from '../drawing/strokes.js';
import { wrap } from '../text/wrap.js';
import { drawDimensions } from './canvas-dimensions.js';
import { type Layout, layOut } from './canvas-layout.js';
import { type Filled, placeMarks } from './canvas-marks.js';
import { type CellLine, emptySheet, sheetLines } from './canvas-sheet.js';
import { setSlanted } from './canvas-slanted.js';
import { ARROW_HEADS } from './canvas-slanted-signs.js';
import { drawHidden, drawSigns, drawStrokes, drawWords, FILL, fillPatches } from './canvas-wood.js';

/** A drawing set in terminal cells: each character is one cell wide. */
export type CellPicture = {
  /** Lines from top to bottom, with the runs of cells, `[from, to)`, that are to be emphasized. */
  readonly lines: readonly CellLine[];
  /** True when every line is within one cell of its place at one scale for both directions. */
  readonly toScale: boolean;
  /** Share of the edges, by length, that there is no room for: a corner view may be too crowded. */
  readonly leftOut?: number;
  /** What has to be said beside the picture; it takes no part of the room. */
  readonly note?: string;
};

/** In less than this no piece of furniture is recognized; found by looking. */
const LEAST = { columns: 16, rows: 4 };

/**
 * Sets a drawing in at most `room.columns` by `room.rows` cells, which are taken to be twice as high
 * as wide. Thin boards get cells of their own where the room allows; dimensions give way before
 * boards do. In less than 16 by 4 cells the drawing is told in words instead.
 */
export function setInCells(
  drawing: Drawing,
  room: { readonly columns: number; readonly rows: number },
  style: { readonly ascii: boolean },
): CellPicture {
  if (drawing.strokes.length === 0) return words(drawing.inWords, room);
  if (room.columns < LEAST.columns || room.rows < LEAST.rows) {
    const { columns, rows } = LEAST;
    const picture = words(drawing.inWords, room);
    return {
      ...picture,
      note: `Too little room to draw: it takes ${columns} columns by ${rows} rows.`,
    };
  }
  if (!drawing.square) return setSlanted(drawing, room, style);
  const layout = layOut(drawing, room);
  const lines = sheetLines(drawn(drawing, layout, style.ascii), style.ascii);
  const over = lines.length < room.rows ? directionLines(drawing, layout, style.ascii) : [];
  const fits = over.every(({ text }) => text.length <= room.columns);
  return { lines: fits ? [...over, ...lines] : lines, ...scaleOf(layout) };
}

/** Which way the wall is, in a line over the drawing: at its middle, or at the end that looks there. */
function directionLines(
  { arrows }: Drawing,
  { area }: Layout,
  ascii: boolean,
): readonly CellLine[] {
  const { up, right } = ARROW_HEADS[ascii ? 'ascii' : 'unicode'];
  return arrows
    .filter(({ kind }) => kind === 'toward')
    .map(({ from, to, text }) => {
      const isUp = Math.abs(to.u - from.u) < Math.abs(to.v - from.v);
      const words = isUp ? `${up} ${text}` : `${text} ${right}`;
      const free = Math.max(0, area.columns - words.length);
      const column = area.left + (isUp ? Math.floor(free / 2) : free);
      return { text: ' '.repeat(column) + words, bright: [] };
    });
}

function drawn(drawing: Drawing, layout: Layout, ascii: boolean) {
  const { area, setting } = layout;
  const sheet = emptySheet(layout.columns, layout.rows);
  drawStrokes(sheet, drawing.strokes, setting);
  const filled: Filled = new Map();
  fillPatches(sheet, drawing.patches, { setting, ascii, filled });
  drawHidden(sheet, drawing.strokes, { setting, ascii });
  drawSigns(sheet, drawing, { setting, ascii });
  drawWords(sheet, drawing, setting);
  drawDimensions(sheet, layout.dimensions, area);
  const cellOf = ({ on }: Mark) => ({ column: setting.columnOf(on.u), row: setting.rowOf(on.v) });
  placeMarks(sheet, drawing.marks, {
    filled,
    fill: FILL[ascii ? 'ascii' : 'unicode'],
    ascii,
    cellOf,
  });
  return sheet;
}

function scaleOf(layout: Layout): Pick<CellPicture, 'toScale' | 'note'> {
  if (layout.merged) {
    return { toScale: false, note: 'Not to scale; too little room to show every board by itself.' };
  }
  if (!layout.toScale)
    return { toScale: false, note: 'Not to scale: thin boards are drawn wider.' };
  return { toScale: true };
}

function words(
  text: string,
  room: { readonly columns: number; readonly rows: number },
): CellPicture {
  const lines = room.columns < 1 ? [] : wrap(text, room.columns);
  return {
    lines: lines.slice(0, Math.max(0, room.rows)).map(line => ({ text: line, bright: [] })),
    toScale: false,
  };
}
