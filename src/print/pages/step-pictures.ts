import { draw, fullestSide } from '../../drawing/draw.js';
import { drawingOf } from '../../drawing/drawings.js';
import { squareInput } from '../../drawing/step-drawing.js';
import { stepScene } from '../../drawing/step-scene.js';
import type { Drawing } from '../../drawing/strokes.js';
import type { Mm } from '../../measure/quantities.js';
import type { Plan, Step } from '../../plan/plan.js';
import { showsWhole } from '../kept-drawings.js';
import { beside, lower, type Piece, piece } from '../sheet/piece.js';
import { drawingPiece, type Room } from '../sheet/set-drawing.js';
import { wordPieces } from '../sheet/set-words.js';
import { SIZE } from '../sheet/type.js';
import type { Pack } from './pack.js';

const GAP = 6;

/** Pictures of a step, to be set so high. */
export type SetPictures = (high: Mm) => readonly Piece[];

/**
 * What goes where: from a corner, and beside it the view that shows most of it, with the figures. A
 * step that adds no board has no picture. Drawn once, however many heights are tried.
 */
export function picturePieces(step: Step, pack: Pack): SetPictures {
  const { measure, plan } = pack;
  if (step.bright.length === 0 || showsWhole(step)) return () => [];
  const corner = drawingOf(pack.drawings, 'steps', step.id);
  if (corner === undefined) return () => [];
  const figures = figuresView(step, plan);
  const half = (measure.width - GAP) / 2;
  return high => {
    const room = { width: half, height: high };
    const left = drawingPiece(corner, room, measure.rule);
    const right = drawingPiece(figures, room, measure.rule);
    return [
      { ...beside(left, right, half + GAP), above: 3 },
      ...corner.notes.flatMap(note => wordPieces(note, measure, { size: SIZE.small, above: 1 })),
    ];
  };
}

const NOTCH_HIGH: Mm = 56;

/** The joint sheet of the pieces that are notched, the first where there are several alike. */
export function notchPieces(step: Step, { plan, drawings, measure }: Pack): readonly Piece[] {
  if (step.phase !== 'notch') return [];
  const worked = new Set(step.bright);
  const rows = plan.cutList.filter(({ pieces }) => pieces.some(id => worked.has(id)));
  const [drawing] = rows.flatMap(({ mark }) => drawingOf(drawings, 'joints', mark) ?? []);
  if (drawing === undefined) return [];
  const room = { width: measure.width, height: NOTCH_HIGH };
  return [
    ...wordPieces(drawing.title, measure, { size: 10, above: 3 }),
    lower(drawingPiece(drawing, room, measure.rule), 1.5),
  ];
}

/** Where in the finished piece the boards of a step will be; nothing for a step without boards. */
export function wherePiece(step: Step, { drawings, measure }: Pack, room: Room): Piece {
  const drawing = drawingOf(drawings, 'steps', step.id);
  return drawing === undefined ? piece(0, []) : drawingPiece(drawing, room, measure.rule);
}

/** The square view that shows most of what is added. */
function figuresView(step: Step, plan: Plan): Drawing {
  // Names stand on the picture beside it.
  const input = { ...squareInput(plan, stepScene(plan, step)), names: new Map<string, string>() };
  return draw(input, fullestSide(input));
}
