import { SQUARE_VIEWS } from '../../drawing/draw.js';
import type { NamedDrawing } from '../../drawing/drawings.js';
import type { Mm } from '../../measure/quantities.js';
import { beside, bound, type Piece } from '../sheet/piece.js';
import { drawingPiece, type Room } from '../sheet/set-drawing.js';
import { headingPieces, type Measure, titlePieces, wordPieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';

const GAP = 8;

/** The piece squarely from three sides with its sizes, cut through, and pulled apart. */
export function viewPieces({ drawings, measure }: Pack): readonly Piece[] {
  const of = (group: NamedDrawing['group']) => drawings.filter(it => it.group === group);
  const square = of('views').filter(it => SQUARE_VIEWS.some(view => view === it.of));
  return [
    ...titlePieces('From all sides', measure),
    ...square.map(it => viewPiece(it, { width: measure.width, height: heightOf(it) }, measure)),
    ...pairs(of('sections'), 'Cut through', measure),
    ...pairs(of('assemblies'), 'Pulled apart', measure),
  ];
}

/** From above the arrow toward the wall stands over the piece. */
function heightOf({ of }: NamedDrawing): Mm {
  return of === 'above' ? 78 : 56;
}

/** Two drawings side by side in a row, the heading over the first. */
function pairs(
  named: readonly NamedDrawing[],
  heading: string,
  measure: Measure,
): readonly Piece[] {
  if (named.length === 0) return [];
  const half = { ...measure, width: (measure.width - GAP) / 2 };
  const rows = Array.from({ length: Math.ceil(named.length / 2) }, (_, row): Piece => {
    const [left, right] = named
      .slice(2 * row, 2 * row + 2)
      .map(it => viewPiece(it, { width: half.width, height: 88 }, half));
    if (left === undefined) throw new Error('a row without a drawing');
    return right === undefined ? left : { ...beside(left, right, half.width + GAP), above: 6 };
  });
  return [...headingPieces(heading, measure), ...rows];
}

function viewPiece(named: NamedDrawing, room: Room, measure: Measure): Piece {
  const drawing = named.draw();
  return bound(
    [
      ...wordPieces(drawing.title, measure, { size: 10.5, bold: true }),
      { ...drawingPiece(drawing, room, measure.rule), above: 2 },
      ...drawing.notes.flatMap(note => wordPieces(note, measure, { size: 10, above: 1 })),
    ],
    { above: 6 },
  );
}
