import type { NamedDrawing } from '../../drawing/drawings.js';
import type { Mm } from '../../measure/quantities.js';
import { bound, type Piece } from '../sheet/piece.js';
import { drawingPiece } from '../sheet/set-drawing.js';
import { headingPieces, type Measure, titlePieces, wordPieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';

const JOINT_HIGH: Mm = 74;
const SCREW_HIGH: Mm = 52;

/** Every notch and every place of screws, each with its figures and the order of its cuts. */
export function jointPieces({ drawings, measure }: Pack): readonly Piece[] {
  const of = (group: NamedDrawing['group']) => drawings.filter(it => it.group === group);
  return [
    ...titlePieces('Joints', measure),
    ...of('joints').map(it => sheetPiece(it, JOINT_HIGH, measure)),
    ...screwPieces(of('screws'), measure),
  ];
}

function screwPieces(screws: readonly NamedDrawing[], measure: Measure): readonly Piece[] {
  if (screws.length === 0) return [];
  return [
    ...headingPieces('Where the screws go, on both boards', measure),
    ...screws.map(it => sheetPiece(it, SCREW_HIGH, measure)),
  ];
}

function sheetPiece(named: NamedDrawing, height: Mm, measure: Measure): Piece {
  const drawing = named.draw();
  return bound(
    [
      ...wordPieces(drawing.title, measure, { size: 12, bold: true }),
      { ...drawingPiece(drawing, { width: measure.width, height }, measure.rule), above: 2 },
      ...drawing.notes.flatMap((note, at) =>
        wordPieces(note, measure, { size: 10, above: at === 0 ? 2 : 0.4 }),
      ),
    ],
    { above: 7 },
  );
}
