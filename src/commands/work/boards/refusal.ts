import { formatBoardLength, formatLengthExact } from '../../../measure/format-length.js';
import type { Display, Mm } from '../../../measure/quantities.js';
import { fromUnits, gridSteps, snapDown, tidy, toUnits } from '../../../measure/round.js';
import { lessThan } from '../../../measure/tolerance.js';
import { planCutting } from '../../../solve/cutting/plan-cutting.js';
import type { CuttingPlan, MissingPiece } from '../../../solve/cutting/problem.js';
import type { BoardsAsk, Wanted } from './boards-ask.js';
import type { BoardsProblem } from './boards-problem.js';
import { type NearMiss, nearMisses, nearMissWords, squaring } from './near-miss.js';

/** Which pieces have no board, by how much it fails, and what would fit. */
export function refusal(
  ask: BoardsAsk,
  asked: BoardsProblem,
  { plan, display }: { readonly plan: CuttingPlan; readonly display: Display },
): readonly string[] {
  const misses = nearMisses(ask, display);
  return plan.missing.flatMap(missing => {
    const piece = asked.pieces.get(missing.piece);
    if (piece === undefined) throw new Error(`no piece ${missing.piece}`);
    const length = formatLengthExact(piece.length, display);
    const own = misses.filter(miss => miss.piece === piece);
    return [
      `${missing.count} of ${piece.name}, ${length}: ${WHY[missing.why]}.`,
      ...own.map(miss => nearMissWords(miss, ask, display)),
      ...wayOut(missing, piece, { ask, asked, display, own }),
    ];
  });
}

const WHY: Readonly<Record<MissingPiece['why'], string>> = {
  'longer-than-every-board': 'longer than every board',
  'no-board-left': 'no board is left',
};

type Ground = {
  readonly ask: BoardsAsk;
  readonly asked: BoardsProblem;
  readonly display: Display;
  readonly own: readonly NearMiss[];
};

function wayOut(missing: MissingPiece, piece: Wanted, ground: Ground): readonly string[] {
  const { ask, asked, display, own } = ground;
  const together = own.at(0)?.needed ?? piece.length + squaring(ask);
  const buy = `A board of ${formatLengthExact(together, display)} or longer would do.`;
  if (missing.why === 'longer-than-every-board') {
    const most = Math.max(
      0,
      ...asked.problem.stock.map(it => it.length - it.trimStart - it.trimEnd),
    );
    const words = formatLengthExact(snapDown(fromUnits(most), display.grid), display);
    return [`The longest piece that fits is ${words}. ${buy}`];
  }
  const all = longestThatFits(missing, piece, ground);
  const shorter =
    all === undefined || own.some(({ fits }) => !lessThan(fits, all) && !lessThan(all, fits))
      ? []
      : [`All ${piece.count} of ${piece.name} would fit at ${formatLengthExact(all, display)}.`];
  return [...shorter, own.length > 0 || missing.count === 1 ? buy : moreBoards(ground)];
}

function moreBoards({ ask, display }: Ground): string {
  const [first] = ask.boards;
  return first === undefined
    ? 'Give a length that the store sells too, such as --board 8ft.'
    : `Another board of ${formatBoardLength(first.length, display)} may do: raise its number.`;
}

/** A short search is enough to know whether pieces a little shorter fit; more is not worth waiting for. */
const EFFORT = 0.02;
/** Below this share of the length wanted it would be another piece. */
const LEAST_SHARE = 0.75;

/** The longest length on the marking grid at which every one of these pieces gets a board. */
function longestThatFits(missing: MissingPiece, piece: Wanted, { asked, display }: Ground) {
  const { problem } = asked;
  const allFit = (length: Mm) => {
    const pieces = problem.pieces.map(it =>
      it.id === missing.piece ? { ...it, length: toUnits(length, 'up') } : it,
    );
    return planCutting({ ...problem, pieces }, { effort: EFFORT }).missing.length === 0;
  };
  let fitting = gridSteps(piece.length * LEAST_SHARE, display.grid, 'up');
  let failing = gridSteps(piece.length, display.grid, 'up');
  if (fitting < 1 || !allFit(fitting * display.grid)) return undefined;
  while (failing - fitting > 1) {
    const middle = Math.floor((fitting + failing) / 2);
    if (allFit(middle * display.grid)) fitting = middle;
    else failing = middle;
  }
  return tidy(fitting * display.grid);
}
