import { drawingOf } from '../../drawing/drawings.js';
import type { Mm } from '../../measure/quantities.js';
import { measuredFacts, wholeFacts } from '../../plan/pages/overview-page.js';
import { doneCount } from '../../workbook/next-step.js';
import { type Mark, words } from '../sheet/mark.js';
import { beside, bound, lower, type Piece, piece } from '../sheet/piece.js';
import { factPieces } from '../sheet/set-blocks.js';
import { drawingPiece } from '../sheet/set-drawing.js';
import { headingPieces, itemPieces, wordPieces } from '../sheet/set-words.js';
import { ascent, leading, SIZE } from '../sheet/type.js';
import type { Pack } from './pack.js';

/** A part of the paper and the page that it begins on. */
export type Entry = { readonly title: string; readonly page: number };

/** What it will be: its picture, sizes, and where in the paper is what. */
export function coverPieces(pack: Pack, entries: readonly Entry[]): readonly Piece[] {
  const { plan, measure } = pack;
  return [
    ...wordPieces(plan.title, measure, { size: 28, bold: true }),
    ...buildPieces(pack),
    ...wordPieces(plan.about, measure, { above: 2 }),
    ...cornerPieces(pack),
    frontPiece(pack),
    ...(entries.length === 0 ? [] : headingPieces('In these pages', measure)),
    ...entryPieces(entries, pack),
    ...wordPieces(
      'Print at 100 %, not fitted to the page: drawings marked 1:1 are then right to lay on the wood.',
      measure,
      { size: SIZE.small, above: 4 },
    ),
    // Last, since they may go on over the page; the list of pages must not.
    ...factPieces(measuredFacts(plan), measure),
    ...warningPieces(pack),
  ];
}

/** The finished piece as it will stand there. */
function cornerPieces({ drawings, measure }: Pack): readonly Piece[] {
  const drawing = drawingOf(drawings, 'views', 'corner-right');
  if (drawing === undefined) return [];
  return [lower(drawingPiece(drawing, { width: measure.width, height: 74 }, measure.rule), 4)];
}

/** What it is in figures, beside the view from the front with its sizes. */
function frontPiece({ plan, drawings, measure }: Pack): Piece {
  const half = measure.width / 2;
  const { rule } = measure;
  const facts = bound(factPieces(wholeFacts(plan), { rule, width: half - 4 }, SIZE.table));
  const drawing = drawingOf(drawings, 'views', 'front');
  if (drawing === undefined) return lower(facts, 4);
  const front = drawingPiece(drawing, { width: half, height: 44 }, rule);
  return { ...beside(facts, front, half), above: 4 };
}

function buildPieces({ build, plan, measure }: Pack): readonly Piece[] {
  if (build === undefined) return [];
  const done = doneCount(plan.steps, build.progress);
  const text = `${build.workbook.name}: ${done} of ${plan.steps.length} steps done`;
  return wordPieces(text, measure, { size: 14, bold: true, above: 1 });
}

function warningPieces({ plan, measure }: Pack): readonly Piece[] {
  if (plan.warnings.length === 0) return [];
  return [
    ...headingPieces('Look at this first', measure),
    ...plan.warnings.flatMap(text => itemPieces(text, 'dash', measure)),
  ];
}

/** The parts in two columns, read down. */
function entryPieces(entries: readonly Entry[], { measure }: Pack): readonly Piece[] {
  const rows = Math.ceil(entries.length / 2);
  return Array.from({ length: rows }, (_, row) =>
    piece(leading(SIZE.words), [
      ...entryMarks(entries[row], 0),
      ...entryMarks(entries[row + rows], measure.width / 2),
    ]),
  );
}

function entryMarks(entry: Entry | undefined, x: Mm): readonly Mark[] {
  if (entry === undefined) return [];
  const y = ascent(SIZE.words);
  return [
    words({ x: x + 10, y }, String(entry.page), SIZE.words, { bold: true, anchor: 'end' }),
    words({ x: x + 14, y }, entry.title, SIZE.words),
  ];
}
