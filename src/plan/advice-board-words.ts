import { capital } from '../measure/capital.js';
import { formatLength } from '../measure/format-length.js';
import type { Display } from '../measure/quantities.js';
import { listWords } from '../text/list.js';
import type { BoardAdvice } from './advice-board.js';
import {
  assumption,
  boardLines,
  buyWords,
  nothingToBuy,
  shortLines,
  spareLines,
} from './advice-words.js';
import { cutWords } from './pages/boards-page.js';
import { boardName, type RackBoard } from './rack.js';

/** The answer in one line: is a piece lost, and has anything to be bought? */
export function boardVerdict(advice: BoardAdvice, display: Display): string {
  switch (advice.fits) {
    case 'nothing-planned':
      return 'No piece is lost: nothing was to be cut from it.';
    case 'same-board':
      return `No piece is lost: what is sound of it is enough. ${capital(nothingToBuy(advice))}.`;
    case 'on-the-rack':
      return `No piece is lost: the other boards have room. ${capital(nothingToBuy(advice))}.`;
    case 'another-board':
      return advice.missing.length > 0
        ? `No board of your store is long enough: ask for ${advice.section} of ${formatLength(advice.longEnough, display)} or more.`
        : `It takes another board: ${buyWords(advice, display)}.`;
  }
}

/** What to do now, one line a thing. */
export function boardAdviceLines(advice: BoardAdvice, display: Display): readonly string[] {
  const { others, section } = advice;
  const buy = buyWords(advice, display);
  return [
    'Draw a cross over the bad part, so that nobody cuts a piece out of it.',
    ...soundLines(advice, display),
    ...boardLines({ ...advice, changed: others }, display),
    ...shortLines(advice, display),
    ...(buy === '' ? [] : [`Buy before next time: ${buy}. All other pieces can be cut meanwhile.`]),
    ...spareLines(advice, display),
    assumption(section),
  ];
}

/** Where the pieces of the board come from now, for the journal. */
export function boardThenWords(advice: BoardAdvice, display: Display): string {
  return [
    ...soundLines(advice, display),
    ...boardLines({ ...advice, changed: advice.others }, display),
  ].join(' ');
}

/** Every sound stretch with what is cut from it; where none is, that is said. */
function soundLines({ board, sound }: BoardAdvice, display: Display): readonly string[] {
  const length = (value: number) => formatLength(value, display);
  if (sound.length === 0) return [`${capital(boardName(board))}: none of it is sound.`];
  const words = (it: RackBoard) =>
    it.cuts.length === 0 ? `${length(it.length)} to keep` : `cut ${cutWords(it, length)}`;
  const free = sound.filter(({ cuts }) => cuts.length === 0);
  if (free.length === sound.length)
    return [`${capital(boardName(board))}: keep ${listWords(free.map(it => length(it.length)))}.`];
  return sound.map(it => `${capital(boardName(it))}: ${words(it)}.`);
}
