import type { CuttingProblem, Piece, Stock } from './problem.js';

/** Boards that are alike for cutting: same room, same cost. */
export type BoardKind = {
  /** Room in reduced units; a piece takes its reduced length, kerf included. */
  readonly room: number;
  readonly cost: number;
  /** Infinity when there are as many as wanted. */
  readonly available: number;
  /** True for the one kind that stands for "this piece has no board": it holds any one piece. */
  readonly single: boolean;
  /** The real boards behind it, longest first. */
  readonly stock: readonly Stock[];
};

/** The problem with kerf and trim worked in, equal lengths merged and units as coarse as they can be. */
export type ReducedProblem = {
  /** Reduced lengths, longest first, all different. */
  readonly lengths: readonly number[];
  readonly demands: readonly number[];
  /** The pieces behind each length. */
  readonly pieces: readonly (readonly Piece[])[];
  /** Roomiest first, cheaper first among equals; the single kind, when there is one, last. */
  readonly kinds: readonly BoardKind[];
  readonly tooLong: readonly Piece[];
};

/** Room of a board for pieces that each bring one kerf: 3000 mm, no trim, 3 mm blade: 3003. */
export function roomOf(stock: Stock, kerf: number): number {
  return stock.length - stock.trimStart - stock.trimEnd + kerf;
}

/** Greatest common divisor of two whole numbers of 0 or more: 12 and 18 give 6. */
export function greatestCommonDivisor(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  return x;
}

/**
 * Works kerf and trim into the lengths (piece + kerf, room + kerf), merges equals, divides by the common
 * divisor and drops boards that a roomier one undercuts. Throws a RangeError on numbers that are not whole
 * or on a repeated id, which the caller has to rule out. Three 1000 mm pieces from 3000 mm with a 3 mm blade
 * become three pieces of 1 in a room of floor(3003 / 1003) = 2: two fit.
 */
export function normalize(problem: CuttingProblem): ReducedProblem {
  refuseBadNumbers(problem);
  const { kerf } = problem;
  const usable = problem.stock.filter(
    stock => (stock.available ?? 1) > 0 && roomOf(stock, kerf) > 0,
  );
  const longest = Math.max(0, ...usable.map(stock => roomOf(stock, kerf) - kerf));
  const wanted = problem.pieces.filter(piece => piece.count > 0);
  const byLength = new Map<number, Piece[]>();
  for (const piece of wanted) {
    if (piece.length <= longest) {
      byLength.set(piece.length, [...(byLength.get(piece.length) ?? []), piece]);
    }
  }
  const groups = [...byLength].sort(([a], [b]) => b - a);
  const unit = groups.reduce((gcd, [length]) => greatestCommonDivisor(gcd, length + kerf), 0);
  const lengths = groups.map(([length]) => (length + kerf) / unit);
  const demands = groups.map(([, pieces]) => pieces.reduce((sum, piece) => sum + piece.count, 0));
  const total = demands.reduce((sum, demand) => sum + demand, 0);
  const shortest = lengths.at(-1) ?? 0;
  const kinds = mergeStock(usable, stock => Math.floor(roomOf(stock, kerf) / unit), total).filter(
    kind => kind.room >= shortest,
  );
  return {
    lengths,
    demands,
    pieces: groups.map(([, pieces]) => pieces),
    kinds: withSingleKind(dropUndercut(kinds), lengths, total),
    tooLong: wanted.filter(piece => piece.length > longest),
  };
}

function refuseBadNumbers(problem: CuttingProblem): void {
  const whole = (value: number, least: number, what: string): void => {
    if (!Number.isSafeInteger(value) || value < least) {
      throw new RangeError(`${what} must be a whole number of at least ${least}, not ${value}.`);
    }
  };
  whole(problem.kerf, 0, 'The kerf');
  for (const { id, length, count } of problem.pieces) {
    whole(length, 1, `The length of piece ${id}`);
    whole(count, 0, `The count of piece ${id}`);
  }
  for (const { id, length, cost, available = 0, trimStart, trimEnd } of problem.stock) {
    whole(length, 1, `The length of board ${id}`);
    whole(cost, 0, `The cost of board ${id}`);
    whole(available, 0, `The number of boards ${id}`);
    whole(trimStart, 0, `The start trim of board ${id}`);
    whole(trimEnd, 0, `The end trim of board ${id}`);
  }
  for (const ids of [problem.pieces.map(p => p.id), problem.stock.map(s => s.id)]) {
    const twice = ids.find((id, place) => ids.indexOf(id) !== place);
    if (twice !== undefined) throw new RangeError(`The id ${twice} is used twice.`);
  }
}

function mergeStock(
  usable: readonly Stock[],
  room: (stock: Stock) => number,
  mostNeeded: number,
): BoardKind[] {
  const alike = new Map<string, Stock[]>();
  for (const stock of usable) {
    const key = `${room(stock)} ${stock.cost} ${stock.available === undefined}`;
    alike.set(key, [...(alike.get(key) ?? []), stock]);
  }
  return [...alike.values()]
    .map(group => {
      const stock = group.sort((a, b) => roomOf(b, 0) - roomOf(a, 0));
      const [first] = stock as [Stock, ...Stock[]];
      const count = stock.reduce((sum, one) => sum + (one.available ?? Infinity), 0);
      const available = count === Infinity ? count : Math.min(count, mostNeeded);
      return { room: room(first), cost: first.cost, available, single: false, stock };
    })
    .sort((a, b) => b.room - a.room || a.cost - b.cost || a.available - b.available);
}

/** A board is never needed when one at least as roomy costs no more and there are as many as wanted. */
function dropUndercut(kinds: readonly BoardKind[]): BoardKind[] {
  return kinds.filter(
    (kind, place) =>
      !kinds.some(
        (other, otherPlace) =>
          other !== kind &&
          other.available === Infinity &&
          other.cost <= kind.cost &&
          other.room >= kind.room &&
          (other.cost < kind.cost ||
            other.room > kind.room ||
            kind.available < Infinity ||
            otherPlace < place),
      ),
  );
}

/** Adds the kind that stands for a missing piece, so dear that any other way to get the piece is preferred. */
function withSingleKind(
  kinds: readonly BoardKind[],
  lengths: readonly number[],
  total: number,
): BoardKind[] {
  const longest = lengths[0] ?? 0;
  const endless = kinds.filter(kind => kind.available === Infinity);
  if (endless.some(kind => kind.room >= longest)) return [...kinds];
  const dearest = Math.max(0, ...endless.map(kind => kind.cost));
  const limited = kinds.filter(kind => kind.available < Infinity);
  const dear = limited.reduce((sum, kind) => sum + kind.cost * kind.available, 1 + total * dearest);
  // A multiple of what all prices are multiples of, so that all sums of prices stay such multiples.
  const step = kinds.reduce((gcd, kind) => greatestCommonDivisor(gcd, kind.cost), 0);
  const cost = step === 0 ? dear : Math.ceil(dear / step) * step;
  return [...kinds, { room: longest, cost, available: Infinity, single: true, stock: [] }];
}
