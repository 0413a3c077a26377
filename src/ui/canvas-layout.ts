import type { DimensionLine, Drawing } from '../drawing/strokes.js';
import type { Mm } from '../measure/quantities.js';
import { SAME, sameLength } from '../measure/tolerance.js';
import { type Area, depthOf, type PlacedDimension, placeDimensions } from './canvas-dimensions.js';
import { type Fit, fitLines, type Lines, scaleThatFits } from './canvas-fit.js';
import { type DrawingLines, drawingLines } from './canvas-lines.js';
import type { Setting } from './canvas-wood.js';

type Room = { readonly columns: number; readonly rows: number };

/** Where everything of a drawing goes on its sheet. */
export type Layout = Room & {
  readonly area: Area;
  readonly setting: Setting;
  readonly dimensions: readonly PlacedDimension[];
  readonly toScale: boolean;
  readonly merged: boolean;
};

/** A cell is about twice as high as wide (0.45 to 0.55 in the fonts that terminals use). */
const CELL_HEIGHT = 2;
/** Where boards have to merge anyway, dimensions may take what leaves this share of the room. */
const SHARE_FOR_WOOD = 2 / 3;
/** Two directions get one scale unless the tighter one would shrink the other by more than this. */
const ONE_SCALE = 0.6;
/** Margins change the scale and the scale the margins; they settle at once or nearly so. */
const TRIES = 3;

/**
 * Finds the layout with the most dimensions in which no boards merge; where boards merge even without
 * dimensions, the one with the most that still leaves them two thirds of the room.
 */
export function layOut(drawing: Drawing, room: Room): Layout {
  const lines = drawingLines(drawing);
  let crowded: Layout | undefined;
  for (let count = drawing.dimensions.length; count > 0; count -= 1) {
    const layout = withDimensions(lines, drawing.dimensions.slice(0, count), room);
    if (layout === undefined) continue;
    if (!layout.merged) return layout;
    const leaves =
      layout.area.columns >= room.columns * SHARE_FOR_WOOD &&
      layout.area.rows >= room.rows * SHARE_FOR_WOOD;
    if (leaves) crowded ??= layout;
  }
  const bare = placed({ lines, dimensions: [], room, margins: NO_MARGINS });
  if (bare === undefined) throw new Error('no room at all');
  return bare.merged && crowded !== undefined ? crowded : bare;
}

type Margins = {
  readonly left: number;
  readonly right: number;
  readonly above: number;
  readonly below: number;
};
const NO_MARGINS: Margins = { left: 0, right: 0, above: 0, below: 0 };

/** A layout with all these dimensions, or undefined when they take too much room. */
function withDimensions(
  lines: DrawingLines,
  dimensions: readonly DimensionLine[],
  room: Room,
): Layout | undefined {
  let margins = NO_MARGINS;
  for (let i = 0; i < TRIES; i += 1) {
    const layout = placed({ lines, dimensions, room, margins });
    if (layout === undefined) return undefined;
    const needed = marginsOf(layout.dimensions);
    const fits = SIDES.every(side => needed[side] <= margins[side]);
    if (fits && layout.dimensions.length === dimensions.length) return layout;
    margins = widest(margins, needed);
  }
  return undefined;
}

const SIDES = ['left', 'right', 'above', 'below'] as const;

function marginsOf(dimensions: readonly PlacedDimension[]): Margins {
  const depth = (side: keyof Margins) => depthOf(side, dimensions);
  return {
    left: depth('left'),
    right: depth('right'),
    above: depth('above'),
    below: depth('below'),
  };
}

function widest(a: Margins, b: Margins): Margins {
  return {
    left: Math.max(a.left, b.left),
    right: Math.max(a.right, b.right),
    above: Math.max(a.above, b.above),
    below: Math.max(a.below, b.below),
  };
}

type Placing = {
  readonly lines: DrawingLines;
  readonly dimensions: readonly DimensionLine[];
  readonly room: Room;
  readonly margins: Margins;
};

/** Fits the wood between given margins and places the dimensions around it. */
function placed({ lines, dimensions, room, margins }: Placing): Layout | undefined {
  const columns = room.columns - margins.left - margins.right;
  const rows = room.rows - margins.above - margins.below;
  if (columns < 2 || rows < 2) return undefined;
  const scale = scales(lines, { columns, rows });
  const across = fitLines(lines.u, columns, scale.across);
  const up = fitLines(lines.v, rows, scale.up);
  const area: Area = {
    left: margins.left,
    top: margins.above,
    columns: (across.cells.at(-1) ?? 0) + 1,
    rows: (up.cells.at(-1) ?? 0) + 1,
  };
  const columnOf = (u: Mm) => cellOf(lines.u, across, u);
  const rowOf = (v: Mm) => area.rows - 1 - cellOf(lines.v, up, v);
  const inCells = dimensions.map(line => {
    const [a, b] =
      line.along === 'u'
        ? [columnOf(line.from), columnOf(line.to)]
        : [rowOf(line.to), rowOf(line.from)];
    return { line, from: a, to: b };
  });
  const reach = { from: -margins.left, to: room.columns - margins.left - 1 };
  return {
    columns: room.columns,
    rows: margins.above + area.rows + margins.below,
    area,
    setting: { columnOf: u => area.left + columnOf(u), rowOf: v => area.top + rowOf(v) },
    dimensions: placeDimensions(inCells, reach),
    toScale:
      scale.across === scale.up * CELL_HEIGHT &&
      isTrue(lines.u, across, scale.across) &&
      isTrue(lines.v, up, scale.up),
    merged: across.merged || up.merged,
  };
}

/** Cells for each mm: one scale for both directions where that is possible. */
function scales(lines: DrawingLines, room: Room): { across: number; up: number } {
  const perMmAcross = (room.columns - 1) / extentOf(lines.u);
  const perMmUp = (room.rows - 1) / extentOf(lines.v);
  const most = Math.min(perMmAcross, perMmUp * CELL_HEIGHT);
  const across = scaleThatFits(lines.u, room.columns, most);
  const up = scaleThatFits(lines.v, room.rows, most / CELL_HEIGHT);
  if (across === undefined || up === undefined) return { across: most, up: most / CELL_HEIGHT };
  const one = Math.min(across, up * CELL_HEIGHT);
  if (one < Math.max(across, up * CELL_HEIGHT) * ONE_SCALE) return { across, up };
  return { across: one, up: one / CELL_HEIGHT };
}

function extentOf(lines: Lines): Mm {
  return Math.max(Number.MIN_VALUE, (lines.at.at(-1) ?? 0) - (lines.at[0] ?? 0));
}

/** The cell of a place that may lie between two lines. */
function cellOf(lines: Lines, fit: Fit, place: Mm): number {
  const next = lines.at.findIndex(at => at >= place - SAME);
  const cell = fit.cells[next];
  const at = lines.at[next];
  if (cell === undefined || at === undefined) return fit.cells.at(-1) ?? 0;
  if (next === 0 || sameLength(at, place)) return cell;
  const before = lines.at[next - 1] ?? at;
  const cellBefore = fit.cells[next - 1] ?? cell;
  return Math.round(cellBefore + ((place - before) / (at - before)) * (cell - cellBefore));
}

/** True when no line is farther than a cell from its place at the scale. */
function isTrue(lines: Lines, fit: Fit, perMm: number): boolean {
  const first = lines.at[0] ?? 0;
  return lines.at.every((at, i) => Math.abs((fit.cells[i] ?? 0) - (at - first) * perMm) <= 1);
}
