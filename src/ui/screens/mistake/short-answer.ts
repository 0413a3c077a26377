import { onTheTape } from '../../../plan/on-tape.js';
import { isAsCut, type ShortPiece } from '../../../plan/short-piece.js';
import { shortLines, shortVerdict } from '../../../plan/short-words.js';
import type { Build } from '../../screen.js';
import type { Answer } from './answer.js';
import type { PieceChoice } from './choices.js';

/** Short, and good enough where it goes: it is kept, and a note says so. */
export function answerToShort(
  short: ShortPiece,
  { row, cutting }: PieceChoice,
  { plan: { display } }: Build,
  atMs: number,
): Answer {
  const by = onTheTape(short.by, display);
  return {
    verdict: shortVerdict(short, row, display),
    lines: shortLines(short, display),
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
