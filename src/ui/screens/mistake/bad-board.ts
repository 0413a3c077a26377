import { formatBoardLength, formatLength } from '../../../measure/format-length.js';
import { parseLength } from '../../../measure/length.js';
import { type Parsed, parsed, unreadable } from '../../../measure/parsed.js';
import type { Mm } from '../../../measure/quantities.js';
import { type Stretch, stretchReadings } from '../../../measure/stretch.js';
import { atMost } from '../../../measure/tolerance.js';
import { cutWords } from '../../../plan/pages/boards-page.js';
import { boardName, type RackBoard } from '../../../plan/rack.js';
import { rackNow } from '../../../plan/rack-now.js';
import { benchOf } from '../../bench-of.js';
import type { Build } from '../../screen.js';

/** A board that lies there, by its place on the rack of its section. */
export type BoardThere = { readonly place: number; readonly board: RackBoard };

/** What lies on the rack now; what is still to be bought does not. */
export function boardsThere(section: string, build: Build): readonly BoardThere[] {
  const boards = rackNow(section, benchOf(build))?.rack.boards ?? [];
  return boards
    .map((board, place) => ({ place, board }))
    .filter(({ board }) => board.kind !== 'to-buy' && board.length > 0);
}

/** `Board 3, 8 ft: cut 2 x A 45 in`. */
export function boardThereWords({ board }: BoardThere, { plan }: Build): string {
  const length = (value: Mm) => formatLength(value, plan.display);
  const cuts = board.cuts.length === 0 ? 'nothing planned on it' : cutWords(board, length);
  return `${boardName(board)}, ${formatBoardLength(board.length, plan.display)}: ${cuts}`;
}

const ANSWER = 'Write from where to where, such as 30 to 38, or 80 to end.';

/** Where the line says that the board is bad; an empty line means all of it. */
export function typedStretch(text: string, board: RackBoard, { plan }: Build): Parsed<Stretch> {
  if (text.trim() === '') return parsed({ from: 0, to: board.length });
  const read = (end: string): Parsed<Mm> =>
    /^\s*(?:the\s+)?end\s*$/i.test(end)
      ? parsed(board.length)
      : parseLength(end, plan.display.system);
  const [only, other] = stretchReadings(text, read);
  if (only === undefined || other !== undefined)
    return unreadable('That does not say from where to where.', ANSWER);
  if (atMost(board.length, only.from))
    return unreadable(
      `The board is only ${formatBoardLength(board.length, plan.display)} long.`,
      ANSWER,
    );
  return parsed({ from: only.from, to: Math.min(only.to, board.length) });
}

/** How the line is read: what is bad, and what is sound. */
export function stretchWords({ from, to }: Stretch, board: RackBoard, { plan }: Build): string {
  const length = (value: Mm) => formatLength(value, plan.display);
  const sound = [from, board.length - to].filter(value => value > 0).map(length);
  return sound.length === 0
    ? 'all of it'
    : `bad from ${length(from)} to ${length(to)}; sound: ${sound.join(' and ')}`;
}
