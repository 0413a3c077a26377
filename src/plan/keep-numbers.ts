import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { inCuttingOrder, type Turns } from './cutting-order.js';
import type { Purchase } from './plan.js';

/** Pieces of one mark that find no wood. */
export type Unfound = { readonly mark: string; readonly length: Mm; readonly count: number };

/**
 * What is left without wood when pieces are taken, in the order of sawing, from the lowest number that still has room, and not
 * from the boards that the plan names. Two boards of 96 in are planned as 60 + 34 and 48 + 46: taken as they come, 60 and
 * 48 in would be cut first and 34 in after them, from the board that has just room for 46.
 */
export function unfoundAsTheyCome(
  { boards, kerf, trim }: Purchase,
  turns: Turns,
): readonly Unfound[] {
  const pieces = inCuttingOrder(
    boards.flatMap(({ cuts }) => cuts),
    turns,
  );
  const left = boards.map(({ length }) => length - trim - kerf);
  const unfound = new Map<string, Unfound>();
  for (const { mark, length } of pieces) {
    const at = left.findIndex(room => atMost(length, room));
    if (at >= 0) left[at] = (left[at] ?? 0) - length - kerf;
    else unfound.set(mark, { mark, length, count: (unfound.get(mark)?.count ?? 0) + 1 });
  }
  return [...unfound.values()];
}
