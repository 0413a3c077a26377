import type { Cents, Mm } from '../measure/quantities.js';
import { fromUnits, toUnits } from '../measure/round.js';
import type { SectionProblem } from './purchase-problem.js';
import type { Rack } from './rack.js';
import { roomOn } from './rack-room.js';

/** One board more than the plan needs. */
export type SpareBoard = { readonly length: Mm; readonly cost: Cents };

/** The cheapest board of the store that a piece of this length comes out of; without prices the shortest. */
export function oneBoardMore(
  { problem, stock }: SectionProblem,
  piece: Mm,
): SpareBoard | undefined {
  const wanted = toUnits(piece, 'up');
  const [cheapest] = problem.stock
    .filter(({ id }) => stock.get(id)?.onHand === false)
    .filter(({ length, trimStart, trimEnd }) => length - trimStart - trimEnd >= wanted)
    .sort((a, b) => a.cost - b.cost || a.length - b.length);
  if (cheapest === undefined) return undefined;
  const length = stock.get(cheapest.id)?.length ?? fromUnits(cheapest.length);
  return { length, cost: cheapest.cost };
}

/** Could a piece of this length be cut once more from these boards, beside all that is planned? */
export function hasRoomFor(piece: Mm, rack: Rack): boolean {
  const wanted = toUnits(piece, 'up');
  return rack.boards.some(board => roomOn(board, rack) >= wanted);
}
