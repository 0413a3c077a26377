import { hatchStrokes } from '../../drawing/hatch.js';
import { LINE_LOOKS } from '../../drawing/line-kinds.js';
import type { Drawing, PaperPoint, Patch, Stroke } from '../../drawing/strokes.js';
import type { Mm } from '../../measure/quantities.js';
import { type LineMark, line, type Mark, type Point, words } from './mark.js';
import { type Piece, piece } from './piece.js';
import { arrowMarks, arrowRoom } from './set-arrows.js';
import {
  depthOf,
  dimensionMarks,
  type Field,
  placeOnPaper,
  rightOverhang,
  topOverhang,
} from './set-dimensions.js';
import { besideMarks, columnWidth, namesInside } from './set-names.js';
import { points, type TypeRule } from './type.js';

/** Room that a drawing may fill. */
export type Room = { readonly width: Mm; readonly height: Mm };

/** A drawing set as large as its room allows, or at 1:1 where it is meant so. */
export function drawingPiece(drawing: Drawing, room: Room, rule: TypeRule): Piece {
  const first = scaleFor(drawing, room, { across: 0, up: 0 });
  const rough = around(drawing, first, rule);
  const scale = scaleFor(drawing, room, {
    across: rough.left + rough.right,
    up: rough.above + rough.below,
  });
  const edge = around(drawing, scale, rule);
  const wide = drawing.width * scale;
  const whole = edge.left + wide + edge.right;
  const left = edge.left + Math.max(0, (room.width - whole) / 2);
  const field: Field = {
    left,
    top: edge.above,
    right: left + wide,
    bottom: edge.above + drawing.height * scale,
  };
  return piece(field.bottom + edge.below, drawingMarks(drawing, scale, field, rule));
}

function scaleFor(drawing: Drawing, room: Room, taken: { across: Mm; up: Mm }): number {
  if (drawing.trueSize) return 1;
  const across = (room.width - taken.across) / Math.max(1, drawing.width);
  const up = (room.height - taken.up) / Math.max(1, drawing.height);
  return Math.max(0.001, Math.min(across, up, 1));
}

/** Room that figures and names need on each side, at a scale. */
function around(drawing: Drawing, scale: number, rule: TypeRule) {
  const bottom = drawing.height * scale;
  const placed = placedAt(drawing, scale, { left: 0, top: 0, right: 0, bottom }, rule);
  const { beside } = namesInside(drawing.marks, ({ u, v }) => ({ x: u, y: v }), scale, rule);
  const wide = drawing.width * scale;
  const right = Math.max(depthOf(placed, 'right'), rightOverhang(placed, wide, rule));
  const wood = { width: wide, height: bottom, scale };
  const arrows = arrowRoom(drawing.arrows, wood, scale >= SMALL ? rule : undefined);
  return {
    left: Math.max(depthOf(placed, 'left'), arrows.left),
    right: Math.max(right + columnWidth(beside, rule), arrows.right),
    above: Math.max(depthOf(placed, 'above'), topOverhang(placed, rule), arrows.above),
    below: depthOf(placed, 'below'),
  };
}

function placedAt(drawing: Drawing, scale: number, field: Field, rule: TypeRule) {
  return placeOnPaper(
    drawing.dimensions,
    ({ along, from, to }) =>
      along === 'u'
        ? [field.left + from * scale, field.left + to * scale]
        : [field.bottom - to * scale, field.bottom - from * scale],
    rule,
  );
}

function drawingMarks(
  drawing: Drawing,
  scale: number,
  field: Field,
  rule: TypeRule,
): readonly Mark[] {
  const toPaper = ({ u, v }: PaperPoint): Point => ({
    x: field.left + u * scale,
    y: field.bottom - v * scale,
  });
  const placed = placedAt(drawing, scale, field, rule);
  const names = namesInside(drawing.marks, toPaper, scale, rule);
  const column = field.right + depthOf(placed, 'right');
  return [
    ...drawing.patches.flatMap(patch => patchMarks(patch, scale, toPaper)),
    ...strokeMarks(drawing, scale, toPaper),
    ...drawing.rings.flatMap(({ at, radius }) => ringMarks(toPaper(at), radius * scale)),
    ...drawing.arrows.flatMap(arrow => arrowMarks(arrow, toPaper, scale >= SMALL)),
    ...dimensionMarks(placed, field, rule),
    ...names.inside,
    ...besideMarks(names.beside, toPaper, field, column),
    ...drawing.labels.map(({ at, text, bright }) => {
      const { x, y } = toPaper(at);
      return words({ x, y: y + points(10) * 0.36 }, text, 10, { anchor: 'middle', bold: bright });
    }),
  ];
}

/** What is added is gray, what is cut through is hatched, what is sawn away is hatched closely. */
function patchMarks(
  patch: Patch,
  scale: number,
  toPaper: (point: PaperPoint) => Point,
): readonly Mark[] {
  const corners = patch.corners.map(toPaper);
  if (patch.look === 'added') return [{ kind: 'area', corners, fill: 0.8 }];
  const apart = patch.look === 'cut' ? 2.2 : 1.2;
  return hatchStrokes(patch, apart / scale).map(({ from, to }) =>
    line(toPaper(from), toPaper(to), patch.look === 'cut' ? 0.13 : 0.2),
  );
}

/** Wide lines are twice the narrow ones; where something is added, the rest is narrow. */
const WIDE: Mm = 0.5;
const MIDDLE: Mm = 0.3;
const NARROW: Mm = 0.2;
/** Below this scale full lines would run together. */
const SMALL = 1 / 16;

function strokeMarks(
  { strokes }: Drawing,
  scale: number,
  toPaper: (point: PaperPoint) => Point,
): readonly LineMark[] {
  const adds = strokes.some(({ bright }) => bright);
  const set = strokes.map(stroke => {
    const thick = thickness(stroke, adds) * (scale < SMALL ? 0.6 : 1);
    const dash = LINE_LOOKS[stroke.kind].dashes.map(part => Math.max(0.2, part * 0.25));
    return line(toPaper(stroke.from), toPaper(stroke.to), thick, dash);
  });
  // Lines of one look after each other are one path, and heavy ones cover thin ones.
  return set.toSorted((a, b) => a.thick - b.thick || a.dash.length - b.dash.length);
}

function thickness({ kind, bright }: Stroke, adds: boolean): Mm {
  if (!LINE_LOOKS[kind].wide) return bright ? MIDDLE : NARROW;
  if (bright) return WIDE;
  return adds ? NARROW : MIDDLE;
}

const SIDES = 24;

function ringMarks({ x, y }: Point, radius: Mm): readonly Mark[] {
  const corners = Array.from({ length: SIDES }, (_, at) => {
    const turn = (at / SIDES) * 2 * Math.PI;
    return { x: x + radius * Math.cos(turn), y: y + radius * Math.sin(turn) };
  });
  return [{ kind: 'area', corners, edge: MIDDLE }];
}
