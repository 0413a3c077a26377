import { overviewFacts } from '../../plan/pages/overview-page.js';
import { doneCount } from '../../workbook/next-step.js';
import { words } from '../sheet/mark.js';
import { type Piece, piece } from '../sheet/piece.js';
import { factPieces } from '../sheet/set-blocks.js';
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
    ...factPieces(overviewFacts(plan), measure).map((one, at) =>
      at === 0 ? { ...one, above: 4 } : one,
    ),
    ...warningPieces(pack),
    ...(entries.length === 0 ? [] : headingPieces('In these pages', measure)),
    ...entries.map(entry => entryPiece(entry, pack)),
    ...wordPieces(
      'Print at 100 %, not fitted to the page: drawings marked 1:1 are then right to lay on the wood.',
      measure,
      { size: SIZE.small, above: 4 },
    ),
  ];
}

function buildPieces({ build, plan, measure }: Pack): readonly Piece[] {
  if (build === undefined) return [];
  const done = doneCount(plan.steps, build.progress);
  const text = `${build.name}: ${done} of ${plan.steps.length} steps done`;
  return wordPieces(text, measure, { size: 14, bold: true, above: 1 });
}

function warningPieces({ plan, measure }: Pack): readonly Piece[] {
  if (plan.warnings.length === 0) return [];
  return [
    ...headingPieces('Look at this first', measure),
    ...plan.warnings.flatMap(text => itemPieces(text, 'dash', measure)),
  ];
}

function entryPiece({ title, page }: Entry, { measure }: Pack): Piece {
  const y = ascent(SIZE.words);
  return piece(leading(SIZE.words), [
    words({ x: 10, y }, String(page), SIZE.words, { bold: true, anchor: 'end' }),
    words({ x: Math.min(14, measure.width), y }, title, SIZE.words),
  ]);
}
