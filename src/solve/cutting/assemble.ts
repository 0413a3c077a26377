import type { Use } from './greedy.js';
import type { ReducedProblem } from './normalize.js';
import { roomOf } from './normalize.js';
import type { CutBoard, CuttingProblem, MissingPiece, Piece, Stock } from './problem.js';

/** Turns patterns back into named boards and pieces; pieces cut in excess are left uncut. */
export function assemble(
  problem: CuttingProblem,
  reduced: ReducedProblem,
  uses: readonly Use[],
): { boards: CutBoard[]; missing: MissingPiece[] } {
  const racks = reduced.kinds.map(kind => rackOf(kind.stock));
  const bins = reduced.pieces.map(pieces => binOf(pieces));
  const boards: CutBoard[] = [];
  const missing = new Map<string, number>();
  for (const { pattern, times } of uses) {
    for (let board = 0; board < times; board++) {
      const cuts = pattern.counts.flatMap((count, i) => (bins[i] ?? []).splice(0, count));
      if (reduced.kinds[pattern.kind]?.single) {
        for (const { id } of cuts) missing.set(id, (missing.get(id) ?? 0) + 1);
      } else if (cuts.length > 0) {
        boards.push(cutBoard(problem.kerf, nextFrom(racks[pattern.kind]), cuts));
      }
    }
  }
  return {
    boards,
    missing: [
      ...reduced.tooLong.map(({ id, count }) => ({
        piece: id,
        count,
        why: 'longer-than-every-board' as const,
      })),
      ...[...missing].map(([piece, count]) => ({ piece, count, why: 'no-board-left' as const })),
    ],
  };
}

function cutBoard(kerf: number, stock: Stock, cuts: readonly Piece[]): CutBoard {
  const left = roomOf(stock, kerf) - cuts.reduce((sum, { length }) => sum + length + kerf, 0);
  // The cut that frees the offcut takes one more kerf; a remainder thinner than the blade is dust.
  return { stock: stock.id, cuts: cuts.map(({ id }) => id), offcut: Math.max(0, left - kerf) };
}

/** The single pieces of one length, in the order they were asked for. */
function binOf(pieces: readonly Piece[]): Piece[] {
  return pieces.flatMap(piece => Array.from({ length: piece.count }, () => piece));
}

type Rack = { stock: Stock; left: number }[];

function rackOf(stock: readonly Stock[]): Rack {
  return stock.map(one => ({ stock: one, left: one.available ?? Infinity }));
}

/** The longest board that is left of a kind. */
function nextFrom(rack: Rack | undefined): Stock {
  const next = rack?.find(({ left }) => left > 0);
  if (next === undefined) throw new Error('A pattern uses more boards than there are.');
  next.left -= 1;
  return next.stock;
}
