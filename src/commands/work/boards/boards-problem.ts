import type { Cents, Mm } from '../../../measure/quantities.js';
import { toUnits } from '../../../measure/round.js';
import type { CuttingProblem, Stock } from '../../../solve/cutting/problem.js';
import type { BoardsAsk, ForSale, InHand, Wanted } from './boards-ask.js';

/** What a stock id stands for: a board of the store, or a usable stretch of a board on hand. */
export type Meaning = {
  readonly board: ForSale | InHand;
  readonly onHand: boolean;
  /** Where the stretch begins and ends on its board. */
  readonly from: Mm;
  readonly to: Mm;
  readonly price: Cents;
};

export type BoardsProblem = {
  readonly problem: CuttingProblem;
  readonly meaning: ReadonlyMap<string, Meaning>;
  readonly pieces: ReadonlyMap<string, Wanted>;
  /** False when the boards cost their length, a hundredth of a millimeter being a cent. */
  readonly priced: boolean;
};

/**
 * The question on whole units of 1/320 mm: kerf, squaring and pieces rounded up, boards down, so that nothing
 * that fits there is too long in the shop. An end that is square already is not cut.
 */
export function boardsProblem(ask: BoardsAsk): BoardsProblem {
  const meaning = new Map<string, Meaning>();
  const stock: Stock[] = [];
  const add = (one: Meaning, { available }: { available: number | undefined }) => {
    const id = `${one.onHand ? 'hand' : 'store'}-${stock.length + 1}`;
    meaning.set(id, one);
    const ends = endsOf(one, ask);
    stock.push({
      id,
      length: toUnits(one.to - one.from, 'down'),
      cost: one.onHand ? 0 : one.price,
      ...(available === undefined ? {} : { available }),
      ...ends,
    });
  };
  for (const board of ask.hands)
    for (const { from, to } of stretches(board, ask.kerf))
      add({ board, onHand: true, from, to, price: 0 }, { available: board.count });
  for (const board of ask.boards) {
    const price = board.price ?? Math.round(board.length * 100);
    add({ board, onHand: false, from: 0, to: board.length, price }, { available: board.limit });
  }
  const pieces = new Map(ask.pieces.map((piece, at) => [`piece-${at + 1}`, piece]));
  return {
    problem: {
      pieces: [...pieces].map(([id, { length, count }]) => ({
        id,
        length: toUnits(length, 'up'),
        count,
      })),
      stock,
      kerf: toUnits(ask.kerf, 'up'),
    },
    meaning,
    pieces,
    priced: ask.boards.every(({ price }) => price !== undefined),
  };
}

/** Squaring comes off where the board really ends; the cut at a defect falls into the defect. */
function endsOf({ board, from, to }: Meaning, { trimStart, trimEnd, kerf }: BoardsAsk) {
  const cut = (trim: Mm) => (trim > 0 ? toUnits(trim + kerf, 'up') : 0);
  return {
    trimStart: from > 0 ? 0 : cut(trimStart),
    trimEnd: to < board.length ? 0 : cut(trimEnd),
  };
}

/**
 * What is left of a board between its defects: 96 in with a knot from 10 to 14 in gives 0 to 10 and 14 to 96.
 * A defect narrower than the blade takes as much as the blade.
 */
export function stretches(
  { length, defects }: Pick<InHand, 'length' | 'defects'>,
  kerf: Mm,
): readonly { readonly from: Mm; readonly to: Mm }[] {
  const found: { from: Mm; to: Mm }[] = [];
  let from = 0;
  for (const defect of defects) {
    if (defect.from > from) found.push({ from, to: defect.from });
    from = Math.max(from, defect.to, defect.from + kerf);
  }
  if (from < length) found.push({ from, to: length });
  return found.filter(stretch => stretch.to - stretch.from >= 1);
}
