import type { Mm } from '../../../measure/quantities.js';
import { fromUnits, tidy } from '../../../measure/round.js';
import type { CutBoard, CuttingPlan } from '../../../solve/cutting/problem.js';
import type { Wanted } from './boards-ask.js';
import type { BoardsProblem, Meaning } from './boards-problem.js';

/** One board, or one stretch of a board on hand, as it is cut. */
export type CutUp = Meaning & {
  /** Stretches of one board on hand have one number. */
  readonly number: number;
  /** Where the first piece begins, measured on the whole board. */
  readonly start: Mm;
  readonly cuts: readonly Wanted[];
  readonly offcut: Mm;
  /** So much further in the first cut may fall, to dodge a knot, and all pieces still come out. */
  readonly slack: Mm;
};

/** The boards of a plan in mm, those with the longest pieces first, numbered from 1. */
export function cutUp(asked: BoardsProblem, plan: CuttingPlan): readonly CutUp[] {
  const boards = plan.boards.map(board => told(asked, board));
  boards.sort((a, b) => longest(b) - longest(a));
  const taken = new Map<string, number>();
  const numbers = new Map<string, number>();
  return boards.map(board => {
    const own = boardIds(asked, board);
    const nth = (taken.get(own.stretch) ?? 0) + 1;
    taken.set(own.stretch, nth);
    const key = `${own.board} ${nth}`;
    const number = numbers.get(key) ?? numbers.size + 1;
    numbers.set(key, number);
    return { ...board, number };
  });
}

function told({ problem, meaning, pieces }: BoardsProblem, board: CutBoard) {
  const means = meaning.get(board.stock);
  const stock = problem.stock.find(({ id }) => id === board.stock);
  if (means === undefined || stock === undefined) throw new Error(`no board ${board.stock}`);
  const cuts = board.cuts.map(id => {
    const piece = pieces.get(id);
    if (piece === undefined) throw new Error(`no piece ${id}`);
    return piece;
  });
  const lengths = board.cuts.map(id => problem.pieces.find(it => it.id === id)?.length ?? 0);
  const used = lengths.reduce((sum, length) => sum + length + problem.kerf, -problem.kerf);
  const left = stock.length - stock.trimStart - stock.trimEnd - used;
  // Where the end is square already nothing is cut off; starting further in takes a cut of its own.
  const isCut = stock.trimStart > 0 || means.from > 0;
  return {
    ...means,
    start: tidy(means.from + fromUnits(stock.trimStart)),
    cuts,
    offcut: tidy(fromUnits(board.offcut)),
    slack: tidy(fromUnits(Math.max(0, isCut ? left : left - problem.kerf))),
  };
}

function longest({ cuts }: { readonly cuts: readonly Wanted[] }): Mm {
  return Math.max(0, ...cuts.map(({ length }) => length));
}

/** Each stretch of a board on hand is used at most as often as there are such boards. */
function boardIds({ meaning }: BoardsProblem, board: Meaning) {
  const all = [...meaning.values()];
  const own = all.findIndex(it => it.board === board.board && it.from === board.from);
  return {
    stretch: String(own),
    board: String(all.findIndex(it => it.board === board.board)),
  };
}
