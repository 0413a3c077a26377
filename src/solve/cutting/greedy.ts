import type { BoardKind, ReducedProblem } from './normalize.js';

/** One way to fill a board of one kind: how many of each length. */
export type Pattern = { readonly kind: number; readonly counts: readonly number[] };

/** A pattern and how many boards are cut that way. */
export type Use = { readonly pattern: Pattern; readonly times: number };

/** What is still to be cut, and from how many boards of each kind. */
export type Remainder = {
  readonly demands: readonly number[];
  readonly available: readonly number[];
};

/** Everything still to do. */
export function wholeProblem(problem: ReducedProblem): Remainder {
  return { demands: problem.demands, available: problem.kinds.map(kind => kind.available) };
}

/** Cents for all boards used, a missing piece counted at its deterrent price. */
export function costOf(problem: ReducedProblem, uses: readonly Use[]): number {
  return uses.reduce(
    (sum, { pattern, times }) => sum + kindOf(problem, pattern.kind).cost * times,
    0,
  );
}

/**
 * Cheapest of several longest-first fillings of what remains: always opening one kind of board, for every kind,
 * and always opening the board whose filling costs least for its length. Boards end up no longer than needed.
 */
export function fillGreedily(problem: ReducedProblem, rest: Remainder): Use[] {
  let best: Use[] = [];
  let least = Infinity;
  for (let favorite = -1; favorite < problem.kinds.length; favorite++) {
    if (problem.kinds[favorite]?.single) continue;
    const uses = shorten(problem, rest, fill(problem, rest, favorite));
    const cost = costOf(problem, uses);
    if (cost < least) [best, least] = [uses, cost];
  }
  return best;
}

function fill(problem: ReducedProblem, rest: Remainder, favorite: number): Use[] {
  const demands = [...rest.demands];
  const available = [...rest.available];
  const uses: Use[] = [];
  while (demands.some(count => count > 0)) {
    const pattern = nextBoard(problem, { demands, available }, favorite);
    let times = available[pattern.kind] ?? 0;
    pattern.counts.forEach((count, i) => {
      if (count > 0) times = Math.min(times, Math.floor((demands[i] ?? 0) / count));
    });
    pattern.counts.forEach((count, i) => {
      demands[i] = (demands[i] ?? 0) - count * times;
    });
    available[pattern.kind] = (available[pattern.kind] ?? 0) - times;
    uses.push({ pattern, times });
  }
  return uses;
}

/** The favorite kind if it can be had and holds the longest piece left, else the best value for its length. */
function nextBoard(problem: ReducedProblem, rest: Remainder, favorite: number): Pattern {
  const longest = problem.lengths[rest.demands.findIndex(count => count > 0)] ?? 0;
  let best: Pattern = { kind: -1, counts: [] };
  let bestRate = Infinity;
  problem.kinds.forEach((kind, k) => {
    if ((rest.available[k] ?? 0) <= 0 || kind.room < longest) return;
    if (bestRate === 0) return;
    const counts = fillOne(problem.lengths, rest.demands, kind);
    const filled = counts.reduce((sum, count, i) => sum + count * (problem.lengths[i] ?? 0), 0);
    // A free board is judged by how well it is filled; any price at all comes after it.
    const rate = k === favorite && kind.cost > 0 ? 0 : (kind.cost + 1e-6 * kind.room) / filled;
    if (rate < bestRate) [best, bestRate] = [{ kind: k, counts }, rate];
  });
  return best;
}

function fillOne(
  lengths: readonly number[],
  demands: readonly number[],
  kind: BoardKind,
): number[] {
  let room = kind.room;
  let places = kind.single ? 1 : Infinity;
  return lengths.map((length, i) => {
    const count = Math.min(demands[i] ?? 0, Math.floor(room / length), places);
    room -= count * length;
    places -= count;
    return count;
  });
}

/** Gives every board, fullest first, the cheapest kind that still holds its pieces. */
function shorten(problem: ReducedProblem, rest: Remainder, uses: readonly Use[]): Use[] {
  const left = [...rest.available];
  const result: Use[] = [];
  const loads = uses
    .map(use => ({ use, load: loadOf(problem, use.pattern) }))
    .sort((a, b) => b.load - a.load);
  for (const { use, load } of loads) {
    let times = use.times;
    while (times > 0) {
      const kind = cheapestFor(problem, left, { load, given: use.pattern.kind });
      const now = Math.min(times, left[kind] ?? 0);
      if (now <= 0) return [...uses];
      left[kind] = (left[kind] ?? 0) - now;
      times -= now;
      result.push({ pattern: { kind, counts: use.pattern.counts }, times: now });
    }
  }
  return costOf(problem, result) < costOf(problem, uses) ? result : [...uses];
}

function cheapestFor(
  problem: ReducedProblem,
  left: readonly number[],
  board: { load: number; given: number },
): number {
  const given = kindOf(problem, board.given);
  let best = board.given;
  let least = (left[board.given] ?? 0) > 0 ? given.cost : Infinity;
  problem.kinds.forEach((kind, k) => {
    const fits = kind.single ? given.single : kind.room >= board.load;
    if (fits && (left[k] ?? 0) > 0 && kind.cost < least) [best, least] = [k, kind.cost];
  });
  return best;
}

/** Reduced length that a pattern takes up. */
export function loadOf(problem: ReducedProblem, pattern: Pattern): number {
  return pattern.counts.reduce((sum, count, i) => sum + count * (problem.lengths[i] ?? 0), 0);
}

function kindOf(problem: ReducedProblem, k: number): BoardKind {
  const kind = problem.kinds[k];
  if (kind === undefined) throw new Error(`There is no board kind ${k}.`);
  return kind;
}
