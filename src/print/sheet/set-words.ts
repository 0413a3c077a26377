import type { Mm } from '../../measure/quantities.js';
import { box, line, type Mark, type Points, words } from './mark.js';
import { type Piece, piece } from './piece.js';
import { ascent, leading, SIZE, type TypeRule } from './type.js';
import { wrapType } from './wrap-type.js';

/** Where words go, and how they are measured. */
export type Measure = { readonly width: Mm; readonly rule: TypeRule };

export type WordsLook = { readonly size?: Points; readonly bold?: boolean; readonly above?: Mm };

/** Lines of running words, each a piece. */
export function wordPieces(
  text: string,
  { width, rule }: Measure,
  { size = SIZE.words, bold = false, above = 0 }: WordsLook = {},
): readonly Piece[] {
  return wrapType(text, width, { rule, size, bold }).map((one, at) =>
    piece(leading(size), [words({ x: 0, y: ascent(size) }, one, size, { bold })], {
      above: at === 0 ? above : 0,
    }),
  );
}

/** A heading, which stays with what comes after it. */
export function headingPieces(text: string, measure: Measure): readonly Piece[] {
  return wordPieces(text, measure, { size: SIZE.heading, bold: true, above: 5 }).map(one => ({
    ...one,
    staysWithNext: true,
  }));
}

/** The title of a page over a rule. */
export function titlePieces(text: string, measure: Measure): readonly Piece[] {
  const lines = wordPieces(text, measure, { size: SIZE.title, bold: true });
  const rule = line({ x: 0, y: 1.2 }, { x: measure.width, y: 1.2 }, 0.6);
  return [...lines, piece(4, [rule])].map(one => ({ ...one, staysWithNext: true }));
}

/** What stands before the lines of an item. */
export type Sign = 'dash' | 'box' | 'ticked';

/** Items with a dash or with a box to tick in front, each item parted only between its lines. */
export function itemPieces(
  text: string,
  sign: Sign,
  measure: Measure,
  { size = SIZE.words, bold = false, above = 0.8 }: WordsLook = {},
): readonly Piece[] {
  const indent = sign === 'dash' ? 4 : 7;
  const inner = { ...measure, width: measure.width - indent };
  return wordPieces(text, inner, { size, bold, above }).map((one, at) => {
    const marks = one.marks.map((mark): Mark => {
      return mark.kind === 'words' ? { ...mark, at: { x: indent, y: mark.at.y } } : mark;
    });
    return { ...one, marks: at === 0 ? [...signMarks(sign, size), ...marks] : marks };
  });
}

function signMarks(sign: Sign, size: Points): readonly Mark[] {
  if (sign === 'dash') return [words({ x: 0.5, y: ascent(size) }, '–', size)];
  return tickBox({ x: 0.5, y: ascent(size) - TICK_BOX + 0.5 }, sign === 'ticked');
}

/** Side of a box that a carpenter's pencil can tick. */
export const TICK_BOX: Mm = 4;

/** A box to tick, or one that is ticked. */
export function tickBox(at: { readonly x: Mm; readonly y: Mm }, ticked: boolean): readonly Mark[] {
  const square = box(at, { width: TICK_BOX, height: TICK_BOX }, { edge: 0.35 });
  if (!ticked) return [square];
  const corner = { x: at.x + 1.6, y: at.y + 3.2 };
  return [
    square,
    line({ x: at.x + 0.7, y: at.y + 1.9 }, corner, 0.6),
    line(corner, { x: at.x + 4.3, y: at.y - 0.6 }, 0.6),
  ];
}
