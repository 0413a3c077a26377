import type { NamedDrawing } from '../../drawing/drawings.js';
import type { Drawing } from '../../drawing/strokes.js';
import type { Mm } from '../../measure/quantities.js';
import { flow } from '../sheet/flow.js';
import type { Sheet } from '../sheet/mark.js';
import { beside, bound, lower, type Piece } from '../sheet/piece.js';
import { drawingPiece } from '../sheet/set-drawing.js';
import { wordPieces } from '../sheet/set-words.js';
import { SIZE } from '../sheet/type.js';
import type { Pack } from './pack.js';
import { rulerPiece } from './ruler.js';

const TITLE = 'Marking templates, true size';

/** Each template on a sheet of its own at 1:1, under a ruler that tells whether the printer keeps to it. */
export function templateSheets(pack: Pack): readonly Sheet[] {
  const sheets = pack.drawings
    .filter(({ group }) => group === 'templates')
    .flatMap(named => flow(templatePieces(named, pack), pack.frame.height, TITLE));
  return sheets.map((sheet, at) => (at === 0 ? sheet : withoutBookmark(sheet)));
}

function withoutBookmark({ title, marks }: Sheet): Sheet {
  return { title, marks };
}

const GAP: Mm = 6;
/** Narrower than this, notes beside a template would be all line breaks. */
const NARROWEST: Mm = 36;

function templatePieces(named: NamedDrawing, { measure, frame }: Pack): readonly Piece[] {
  const drawing = named.draw();
  const { rule, width } = measure;
  const head = [
    ...wordPieces(drawing.title, measure, { size: SIZE.heading, bold: true }),
    lower(rulerPiece(), 1),
  ];
  const high = frame.height - heightOf(head) - 2;
  if (drawing.width > width || drawing.height > high) {
    return [...head, ...notePieces(drawing, measure), ...tooLarge(drawing, measure)];
  }
  const set = drawingPiece(drawing, { width: drawing.width, height: high }, rule);
  const left = width - drawing.width - GAP;
  if (left < NARROWEST) return [bound(head), lower(set, 2)];
  const notes = bound(notePieces(drawing, { rule, width: left }));
  return [bound(head), lower(beside(set, notes, drawing.width + GAP), 2)];
}

function notePieces({ notes }: Drawing, measure: Pack['measure']): readonly Piece[] {
  return notes.flatMap(note => wordPieces(note, measure, { size: 10, above: 2 }));
}

function tooLarge({ inWords }: Drawing, measure: Pack['measure']): readonly Piece[] {
  const why =
    'This template is larger than the sheet. Mark from the board itself, or print it from its SVG on larger paper.';
  return [...wordPieces(why, measure, { bold: true, above: 4 }), ...wordPieces(inWords, measure)];
}

function heightOf(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, one) => sum + one.above + one.height, 0);
}
