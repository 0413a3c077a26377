import type { Drawing } from '../../drawing/strokes.js';
import { moved } from '../sheet/mark.js';
import { bound } from '../sheet/piece.js';
import { drawingPiece } from '../sheet/set-drawing.js';
import { wordPieces } from '../sheet/set-words.js';
import type { TypeRule } from '../sheet/type.js';
import { svgText } from './write-svg.js';

/** As large as a sheet laid on its side. */
const ROOM = { width: 250, height: 170 };
const EDGE = 8;

/** A drawing as a file of its own, under its title and that of the piece; one that is meant so at 1:1. */
export function drawingSvg(drawing: Drawing, piece: string, rule: TypeRule): string {
  const title = `${piece}: ${drawing.title}`;
  const width = Math.max(ROOM.width, drawing.trueSize ? drawing.width + 60 : 0);
  const measure = { width, rule };
  const whole = bound([
    ...wordPieces(title, measure, { size: 13, bold: true }),
    { ...drawingPiece(drawing, { ...ROOM, width }, rule), above: 4 },
    ...drawing.notes.flatMap(note => wordPieces(note, measure, { above: 2 })),
  ]);
  return svgText(moved(whole.marks, { x: EDGE, y: EDGE }), {
    width: width + 2 * EDGE,
    height: whole.height + 2 * EDGE,
    title,
    inWords: drawing.inWords,
  });
}
