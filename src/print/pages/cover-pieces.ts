import type { Mm } from '../../measure/quantities.js';
import { overviewFacts } from '../../plan/pages/overview-page.js';
import { doneCount } from '../../workbook/next-step.js';
import { type Mark, words } from '../sheet/mark.js';
import { lower, type Piece, piece } from '../sheet/piece.js';
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
    ...pictures(pack),
    ...factPieces(overviewFacts(plan), measure).map((one, at) =>
      at === 0 ? { ...one, above: 4 } : one,
    ),
    ...(entries.length === 0 ? [] : headingPieces('In these pages', measure)),
    ...entryPieces(entries, pack),
    ...wordPieces(
      'Print at 100 %, not fitted to the page: drawings marked 1:1 are then right to lay on the wood.',
      measure,
      { size: SIZE.small, above: 4 },
    ),
    // Last, since they may go on over the page; the list of pages must not.
    ...warningPieces(pack),
  ];
}

/** The finished piece from a corner, and from the front with its sizes. */
function pictures({ drawings, measure }: Pack): readonly Piece[] {
  const of = (name: string) => drawings.find(it => it.name === name)?.draw();
  return [
    { drawing: of('corner-right'), height: 70 },
    { drawing: of('front'), height: 42 },
  ].flatMap(({ drawing, height }) =>
    drawing === undefined
      ? []
      : [lower(drawingPiece(drawing, { width: measure.width, height }, measure.rule), 4)],
  );
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
