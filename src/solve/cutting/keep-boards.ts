import { roomOf } from './normalize.js';
import type { CutBoard, CuttingPlan, CuttingProblem } from './problem.js';

/**
 * Leaves as many boards of an earlier plan as they were as can be had at the same cost with the same pieces missing.
 * `solve` plans what remains. Boards that no longer fit the problem are passed over. Tries all of them at once, then
 * halves; as many as found, not as many as possible.
 */
export function keepBoards(
  problem: CuttingProblem,
  plan: CuttingPlan,
  earlier: readonly CutBoard[],
  solve: (rest: CuttingProblem) => CuttingPlan,
): CuttingPlan {
  const keeper = new Keeper(problem, plan, solve);
  keeper.keep(earlier);
  return keeper.best;
}

class Keeper {
  best: CuttingPlan;
  private kept: readonly CutBoard[] = [];

  constructor(
    private readonly problem: CuttingProblem,
    private readonly plan: CuttingPlan,
    private readonly solve: (rest: CuttingProblem) => CuttingPlan,
  ) {
    this.best = plan;
  }

  keep(boards: readonly CutBoard[]): void {
    const [first] = boards;
    if (first === undefined || this.keepAll(boards) || boards.length === 1) return;
    const half = Math.ceil(boards.length / 2);
    this.keep(boards.slice(0, half));
    this.keep(boards.slice(half));
  }

  private keepAll(boards: readonly CutBoard[]): boolean {
    const kept = [...this.kept, ...boards];
    const rest = withoutBoards(this.problem, kept);
    if (rest === undefined) return false;
    const { work } = this.best;
    const after = this.solve(rest);
    const isAsGood =
      after.cost + costOf(this.problem, kept) === this.plan.cost &&
      missingIn(after) === missingIn(this.plan);
    this.best = isAsGood
      ? { ...this.plan, boards: [...kept, ...after.boards], missing: after.missing }
      : this.best;
    this.best = { ...this.best, work: work + after.work };
    if (isAsGood) this.kept = kept;
    return isAsGood;
  }
}

function costOf({ stock }: CuttingProblem, boards: readonly CutBoard[]): number {
  const prices = new Map(stock.map(({ id, cost }) => [id, cost]));
  return boards.reduce((sum, board) => sum + (prices.get(board.stock) ?? 0), 0);
}

function missingIn({ missing }: CuttingPlan): number {
  return missing.reduce((sum, { count }) => sum + count, 0);
}

/** What is left to plan, or undefined when the boards or their pieces are not (all) there, or leave other offcuts. */
function withoutBoards(
  problem: CuttingProblem,
  boards: readonly CutBoard[],
): CuttingProblem | undefined {
  const cuts = counted(boards.flatMap(board => board.cuts));
  const taken = counted(boards.map(board => board.stock));
  const pieces = problem.pieces.map(piece => ({
    ...piece,
    count: piece.count - (cuts.get(piece.id) ?? 0),
  }));
  const stock = problem.stock.map(board =>
    board.available === undefined
      ? board
      : { ...board, available: board.available - (taken.get(board.id) ?? 0) },
  );
  const isThere =
    pieces.every(({ count }) => count >= 0) &&
    stock.every(({ available = 0 }) => available >= 0) &&
    boards.every(board => isStillRight(problem, board));
  return isThere ? { ...problem, pieces, stock } : undefined;
}

function counted(ids: readonly string[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const id of ids) counts.set(id, (counts.get(id) ?? 0) + 1);
  return counts;
}

/** True when board and pieces are still as long as they were: the cuts fit, longest first, and leave the same. */
function isStillRight({ pieces, stock, kerf }: CuttingProblem, board: CutBoard): boolean {
  const from = stock.find(({ id }) => id === board.stock);
  const lengths = board.cuts.map(id => pieces.find(piece => piece.id === id)?.length ?? 0);
  if (from === undefined || lengths.length === 0 || lengths.includes(0)) return false;
  const left = roomOf(from, kerf) - lengths.reduce((sum, length) => sum + length + kerf, 0);
  const isSorted = lengths.every((length, at) => at === 0 || (lengths[at - 1] ?? 0) >= length);
  return left >= 0 && isSorted && board.offcut === Math.max(0, left - kerf);
}
