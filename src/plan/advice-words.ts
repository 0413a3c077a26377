import { capital } from '../measure/capital.js';
import { formatBoardLength, formatLength } from '../measure/format-length.js';
import { formatMoney } from '../measure/money.js';
import type { Display } from '../measure/quantities.js';
import { snapDown } from '../measure/round.js';
import { atMost } from '../measure/tolerance.js';
import { listWords } from '../text/list.js';
import type { Advice, RackOutcome } from './advice.js';
import { isShortToHold, NO_HANDS } from './cutting-order.js';
import { isWorthKeeping } from './offcuts.js';
import { cutWords } from './pages/boards-page.js';
import { boardName, type RackBoard } from './rack.js';
import type { Needed } from './work-so-far.js';

/** The answer in one line: lost or not, and whether anything has to be bought. */
export function verdictWords(advice: Advice, display: Display): string {
  const { piece } = advice;
  switch (advice.fits) {
    case 'nothing-to-do':
      return `Nothing is lost: what is left is still long enough for ${piece.mark}.`;
    case 'offcut':
      return `An offcut is long enough for a new one: ${nothingToBuy(advice)}.`;
    case 'on-the-rack':
      return `The boards on the rack are enough for a new one: ${nothingToBuy(advice)}.`;
    case 'serves-elsewhere':
      return `It serves elsewhere: ${servesWords(advice, display)}. ${capital(nothingToBuy(advice))}.`;
    case 'another-board':
      return advice.missing.length > 0
        ? `No board of your store is long enough: ask for ${advice.section} of ${formatLength(advice.longEnough, display)} or more.`
        : `It takes another board: ${buyWords(advice, display)}.`;
  }
}

/** This slip asks for no board; one before it may. */
export function nothingToBuy({ buy }: Pick<RackOutcome, 'buy'>): string {
  return buy.length === 0 ? 'nothing to buy' : 'nothing more to buy';
}

/** `1 x 8 ft of 2x4, 7.48`; without a price where none is known, empty where nothing is to buy. */
export function buyWords(outcome: RackOutcome, display: Display): string {
  const { buy, section, cost, priced, missing, longEnough } = outcome;
  const boards = buy.map(it => `${it.count} x ${formatBoardLength(it.length, display)}`);
  const long = missing.length > 0 ? [`1 x ${formatLength(longEnough, display)} or more`] : [];
  const all = [...boards, ...long];
  if (all.length === 0) return '';
  const price = priced && missing.length === 0 ? `, ${formatMoney(cost)}` : '';
  return `${listWords(all)} of ${section}${price}`;
}

/** What to do now, one line a thing. */
export function adviceLines(advice: Advice, display: Display): readonly string[] {
  const { fits, piece, section } = advice;
  const length = formatLength(piece.length, display);
  if (fits === 'nothing-to-do') {
    return [`Set the stop at ${length} and take off what is too much. It counts as good.`];
  }
  const buy = buyWords(advice, display);
  return [
    ...soundLines(advice, display),
    ...boardLines(advice, display),
    ...shortLines(advice, display),
    ...advice.again.map(it => `Then again for the new one: step ${it.number}, ${it.title}.`),
    ...(buy === '' ? [] : [`Buy before next time: ${buy}. All other pieces can be cut meanwhile.`]),
    ...remainsLines(advice, display),
    ...spareLines(advice, display),
    assumption(section),
  ];
}

/**
 * Where the new piece comes from, for the bench: `the rest of board 3: 1 x B 18 in`. More boards than one
 * can keep in mind are named at the stops.
 */
export function newCutWords(advice: Advice, display: Display): string {
  if (cutAnew(advice).length > MOST_IN_MIND) {
    return 'The boards are shared out anew: each stop tells which board its pieces come from now.';
  }
  return boardLines(advice, display).join(' ');
}

const MOST_IN_MIND = 2;

type Changes = Pick<RackOutcome, 'changed' | 'soundPart'>;

function cutAnew({ changed, soundPart }: Changes): readonly RackBoard[] {
  return changed.filter(board => board !== soundPart && board.cuts.length > 0);
}

/** Boards that are cut otherwise now, also what earlier slips left; the sound part of this one is told apart. */
export function boardLines({ changed, soundPart }: Changes, display: Display): readonly string[] {
  const cutting = cutAnew({ changed, soundPart });
  const free = changed.filter(board => board !== soundPart && board.cuts.length === 0);
  return [
    ...(cutting.length > MOST_IN_MIND
      ? ['The boards are shared out anew. From their next cut on:']
      : []),
    ...cutting.map(board => `${capital(boardWords(board, display))}.`),
    ...(free.length > 0 ? [`Free now: ${listWords(free.map(boardName))}.`] : []),
  ];
}

/** Where the wood is too short for a hand beside the blade. */
export function shortLines(
  { changed }: Pick<RackOutcome, 'changed'>,
  display: Display,
): readonly string[] {
  if (!changed.some(board => board.cuts.length > 0 && isShortToHold(board.length))) return [];
  return [
    `That wood is short: clamp it or saw it by hand. No hand within ${formatLength(NO_HANDS, display)} of a blade.`,
  ];
}

function boardWords(board: RackBoard, display: Display): string {
  const length = (value: number) => formatLength(value, display);
  const isPart = board.kind === 'started' || board.kind === 'remains';
  const left = isPart ? ` (${length(board.length)} left)` : '';
  return `${boardName(board)}${left}: cut ${cutWords(board, length)}`;
}

/** The longest pieces of all that would fit; the shorter ones are plain then. */
const MOST_TOLD = 3;

/** What is cut from the sound part by the boards as they are now: `cut 3 x H pot block, 7-3/16 in, from it`. */
function servesWords({ serves }: Advice, display: Display): string {
  const [only] = serves;
  if (only !== undefined && serves.length === 1 && only.count === 1)
    return `cut it down to ${pieceWords(only, display)}`;
  const each = serves.map(it => `${it.count} x ${pieceWords(it, display)}`);
  return `cut ${listWords(each)}, from it`;
}

/** All that the sound part gives, so that nobody takes one piece and throws away the others. */
function soundLines(advice: Advice, display: Display): readonly string[] {
  const { serves } = advice;
  const [only] = serves;
  if (only === undefined) return [];
  const marks = listWords(
    serves.map(({ mark, count }) => (count > 1 ? `${count} x ${mark}` : mark)),
  );
  const pieces = serves.reduce((sum, { count }) => sum + count, 0);
  const stops =
    serves.length > 1
      ? 'each when its stop is set'
      : `${pieces > 1 ? 'them' : 'it'} when that stop is set`;
  return [`Mark the sound part ${marks} now; cut ${stops}.${restWords(advice, display)}`];
}

/** The plan counts on what is left on the rack: a foot, or as long as a piece that is still to be cut. */
function restWords({ rest, becomes }: Advice, display: Display): string {
  const isUseful = isWorthKeeping(rest) || becomes.some(({ length }) => atMost(length, rest));
  const length = formatLength(snapDown(rest, display.grid), display);
  return isUseful ? ` The rest of it, ${length}, stays on the rack.` : '';
}

/** What the sound part is still good for. */
function remainsLines({ left, becomes, serves }: Advice, display: Display): readonly string[] {
  if (left <= 0 || serves.length > 0) return [];
  const length = formatLength(left, display);
  if (becomes.length === 0) {
    return [
      `The ${length} that is left fits nothing still to be cut: keep it for tests and spacers.`,
    ];
  }
  const each = becomes.slice(0, MOST_TOLD).map(it => `${it.count} x ${pieceWords(it, display)}`);
  return [`The ${length} that is left can still become ${listWords(each, 'or')}.`];
}

/** `B post, 18 in`. */
function pieceWords({ mark, name, length }: Needed, display: Display): string {
  return `${mark} ${name.toLowerCase()}, ${formatLength(length, display)}`;
}

/** The answer where a board came to the rack. */
export function addedVerdict(outcome: RackOutcome, display: Display): string {
  const buy = buyWords(outcome, display);
  if (buy !== '') return `Still to buy: ${buy}.`;
  return outcome.changed.length > 0
    ? 'Every piece has a board now: nothing to buy.'
    : 'It stays a spare: every piece has a board already.';
}

/** What to do with it, one line a thing. */
export function addedLines(outcome: RackOutcome, display: Display): readonly string[] {
  return [
    ...boardLines(outcome, display),
    ...shortLines(outcome, display),
    ...spareLines(outcome, display),
    assumption(outcome.section),
  ];
}

/** Where the next slip would have no wood: what one more board costs. */
export function spareLines(
  { spare, buy, section, priced }: RackOutcome,
  display: Display,
): readonly string[] {
  if (spare === undefined) return [];
  const { piece, board } = spare;
  const price = priced ? ` at ${formatMoney(board.cost)}` : '';
  const more = buy.length > 0 ? 'one more besides' : 'one more board';
  return [
    `No spare is left: another slip with ${piece.mark} would take ${more}, ${formatBoardLength(board.length, display)} of ${section}${price}.`,
  ];
}

/** Said below every answer: what nobody has told the workbook. */
export function assumption(section: string): string {
  return `This takes it that the ${section} boards were cut as the plan numbers them. If not, trust the tape.`;
}
