import { outcomeOf, type RackOutcome } from './advice.js';
import { isFresh, isToBuy, type RackBoard } from './rack.js';
import { type Bench, rackNow } from './rack-now.js';
import { soundOf } from './rack-parted.js';
import type { SpoiledBoard } from './work-so-far.js';

/** What becomes of the pieces that were to be cut from a board that is bad. */
export type BoardFits = 'nothing-planned' | 'same-board' | 'on-the-rack' | 'another-board';

export type BoardAdvice = RackOutcome & {
  readonly fits: BoardFits;
  /** The board as it lay there. */
  readonly board: RackBoard;
  /** What is sound of it, with what is cut from it now. */
  readonly sound: readonly RackBoard[];
  /** Boards besides it that are cut otherwise than before. */
  readonly others: readonly RackBoard[];
};

/**
 * What to do about a board that is bad from a to b; the work is that after it, with this as its last change.
 * Undefined where the rack has no such board.
 */
export function adviceOnBoard(spoiled: SpoiledBoard, bench: Bench): BoardAdvice | undefined {
  const { section, place } = spoiled;
  const before = { ...spoiled, rackChanges: bench.work.rackChanges.slice(0, -1) };
  const boards = rackNow(section, { ...bench, work: before })?.rack.boards ?? [];
  const board = boards[place];
  const now = rackNow(section, bench);
  if (board === undefined || now === undefined) return undefined;
  const outcome = outcomeOf(now, bench);
  const count = soundOf(board, spoiled, bench.setting.display).length;
  // Boards that were to be bought are planned afresh: those behind them have moved up.
  const at = place - boards.slice(0, place).filter(isToBuy).length;
  const sound = now.rack.boards.slice(at, at + count);
  const others = outcome.changed.filter(it => !sound.includes(it));
  const fits = now.last?.buysMore ? 'another-board' : fitsOf(board, sound, outcome);
  return { ...outcome, fits, board, sound, others };
}

function fitsOf(
  board: RackBoard,
  sound: readonly RackBoard[],
  { missing, changed }: RackOutcome,
): BoardFits {
  if (missing.length > 0) return 'another-board';
  if (board.cuts.length === 0) return 'nothing-planned';
  return changed.every(it => sound.includes(it)) ? 'same-board' : 'on-the-rack';
}

/** From which end a bad place is measured on such a board. */
export function datumWords(board: RackBoard): string {
  return isFresh(board) ? 'the end that you square first' : 'the sawn end';
}
