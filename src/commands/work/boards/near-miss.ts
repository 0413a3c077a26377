import {
  formatBoardLength,
  formatLength,
  formatLengthExact,
} from '../../../measure/format-length.js';
import type { Display, Mm } from '../../../measure/quantities.js';
import { snapDown } from '../../../measure/round.js';
import { atMost, lessThan, sameLength } from '../../../measure/tolerance.js';
import { count } from '../../../text/plural.js';
import type { BoardsAsk, Wanted } from './boards-ask.js';

/** Equal pieces that a board seems to hold, until the saw has taken its share. */
export type NearMiss = {
  readonly piece: Wanted;
  readonly board: Mm;
  /** So many would fit if a cut took nothing. */
  readonly pieces: number;
  /** Length that they take with all cuts, and by how much that is too long. */
  readonly needed: Mm;
  readonly short: Mm;
  /** What the last one measures if they are cut all the same. */
  readonly last: Mm;
  /** The longest equal length that does fit, on the marking grid. */
  readonly fits: Mm;
};

/**
 * Every pair of piece and board where the lengths alone add up and the cuts spoil it: three of 1000 mm from
 * 3000 mm with a 3 mm blade need 3006 mm; 998 mm would do.
 */
export function nearMisses(ask: BoardsAsk, { grid }: Display): readonly NearMiss[] {
  const boards = [...ask.hands.filter(({ defects }) => defects.length === 0), ...ask.boards];
  const lengths = boards
    .map(({ length }) => length)
    .filter((length, at, all) => all.findIndex(it => sameLength(it, length)) === at);
  return ask.pieces.flatMap(piece =>
    lengths.flatMap(board => {
      const pieces = Math.min(piece.count, Math.floor((board + 1e-6) / piece.length));
      const lost = squaring(ask) + (pieces - 1) * ask.kerf;
      const needed = pieces * piece.length + lost;
      if (pieces < 1 || atMost(needed, board)) return [];
      const fits = snapDown((board - lost) / pieces, grid);
      const last = board - lost - (pieces - 1) * piece.length;
      if (!lessThan(0, last) || !lessThan(0, fits)) return [];
      return [{ piece, board, pieces, needed, short: needed - board, last, fits }];
    }),
  );
}

/** What squaring takes in all, blade counted; an end that is square already takes nothing. */
export function squaring({ trimStart, trimEnd, kerf }: BoardsAsk): Mm {
  return [trimStart, trimEnd].reduce((sum, trim) => sum + (trim > 0 ? trim + kerf : 0), 0);
}

/** "3 of A, 1000 mm, take 3006 mm with 2 cuts of 3 mm: 6 mm more than the board of 3 m has. …" */
export function nearMissWords(miss: NearMiss, ask: BoardsAsk, display: Display): string {
  const { piece, board, pieces, needed, short, last, fits } = miss;
  const length = (value: Mm) => formatLengthExact(value, display);
  const squared = squaring(ask) > 0 ? [`${length(squaring(ask))} for squaring`] : [];
  const cuts = pieces > 1 ? [`${count(pieces - 1, 'cut')} of ${length(ask.kerf)}`] : [];
  const lost = [...squared, ...cuts].join(' and ');
  const each = pieces > 1 ? ' each' : '';
  return [
    `${pieces} of ${piece.name}, ${length(piece.length)}, take ${length(needed)} with ${lost}: ${length(short)} more than the board of ${formatBoardLength(board, display)} has.`,
    pieces > 1 ? `Cut all the same, the last one is ${length(last)}.` : '',
    `${formatLength(fits, display)}${each} would fit.`,
  ]
    .filter(words => words !== '')
    .join(' ');
}
