import type { Mm } from '../measure/quantities.js';
import { toUnits } from '../measure/round.js';
import { inCuttingOrder, isShortToHold } from './cutting-order.js';
import { isFresh, type Rack, type RackBoard, type RackCut } from './rack.js';
import type { Needed } from './work-so-far.js';

/**
 * What a board has left for more pieces once its planned cuts are made, in whole units of 1/320 mm;
 * rounded so that nothing fits on paper that does not fit on the saw.
 */
export function roomOn(board: RackBoard, rack: Rack): number {
  return Math.max(0, toUnits(board.length, 'down') - usedOf(board, rack));
}

/** How much later the first cut may fall with every piece still coming out; the last may end flush with the board. */
export function slackOn(board: RackBoard, rack: Rack): number {
  const blade = board.cuts.length > 0 ? toUnits(rack.kerf, 'up') : 0;
  return Math.max(0, toUnits(board.length, 'down') - usedOf(board, rack) + blade);
}

function usedOf(board: RackBoard, { kerf, trim }: Rack): number {
  const squared = isFresh(board) ? toUnits(trim + kerf, 'up') : 0;
  const blade = toUnits(kerf, 'up');
  return board.cuts.reduce((sum, cut) => sum + toUnits(cut.length, 'up') + blade, squared);
}

/** The board with one more piece to cut, in the order of sawing. */
export function withCut(board: RackBoard, cut: RackCut, { turns }: Rack): RackBoard {
  return { ...board, cuts: inCuttingOrder([...board.cuts, cut], turns) };
}

/** The rack with every one of these pieces on a board, the other cuts as they were; nothing if one does not fit. */
export function placedBeside(rack: Rack, pieces: readonly Needed[]): Rack | undefined {
  const single = pieces
    .flatMap(({ mark, length, count }) => Array.from({ length: count }, () => ({ mark, length })))
    .sort((a, b) => b.length - a.length);
  let now: Rack = rack;
  for (const cut of single) {
    const at = bestPlace(now, cut.length);
    if (at === undefined) return undefined;
    const boards = now.boards.map((it, i) => (i === at ? withCut(it, cut, rack) : it));
    now = { ...now, boards };
  }
  return now;
}

/**
 * Offcuts first, then what was begun, then planned boards, then whole ones, and last what is too short to be
 * held; the tightest fit among equals.
 */
function bestPlace(rack: Rack, length: Mm): number | undefined {
  const wanted = toUnits(length, 'up');
  const fitting = rack.boards
    .map((board, at) => ({ at, rank: rankOf(board), room: roomOn(board, rack) }))
    .filter(({ room }) => room >= wanted)
    .sort((a, b) => a.rank - b.rank || a.room - b.room || a.at - b.at);
  return fitting[0]?.at;
}

function rankOf(board: RackBoard): number {
  if (isShortToHold(board.length)) return 4;
  if (isOffcut(board)) return 0;
  if (isBegun(board)) return 1;
  return board.cuts.length > 0 ? 2 : 3;
}

/** Left over: begun, and nothing of the plan is to be cut from it. */
export function isOffcut(board: RackBoard): boolean {
  return isBegun(board) && board.cuts.length === 0;
}

function isBegun({ kind }: RackBoard): boolean {
  return kind === 'started' || kind === 'remains' || kind === 'stretch';
}
