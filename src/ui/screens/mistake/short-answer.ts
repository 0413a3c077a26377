import { onTheTape } from '../../../plan/on-tape.js';
import { isAsCut, type ShortPiece } from '../../../plan/short-piece.js';
import { shortLines, shortVerdict } from '../../../plan/short-words.js';
import { goodPieces } from '../../../plan/work-so-far.js';
import type { Build } from '../../screen.js';
import type { Answer } from './answer.js';
import type { PieceChoice } from './choices.js';

/** Short, and good enough where it goes: it is kept, and a note says so. */
export function answerToShort(
  short: ShortPiece,
  { row, cutting, isCounted }: PieceChoice,
  { plan: { display }, progress }: Build,
  atMs: number,
): Answer {
  const by = onTheTape(short.by, display);
  const before = goodPieces(cutting, progress) - (isCounted ? 1 : 0);
  return {
    verdict: shortVerdict(short, row, display),
    lines: shortLines(short, display, before),
    event: isAsCut(short)
      ? undefined
      : {
          kind: 'note-written',
          atMs,
          step: cutting.step.id,
          text: `One ${row.mark} is ${by} short, and is used as it is.`,
        },
    page: 'cut-short',
  };
}
