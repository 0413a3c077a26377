import type { CutBoard, CuttingPlan, CuttingProblem, Piece, Stock } from './problem.js';

/**
 * Adds a plan up again from the problem and the plan alone: every board, cut, kerf, offcut, count and price, and that
 * cost, lower bound and gap belong together. It does not prove the bound again. Returns one sentence for each
 * fault; an empty list means nothing was found.
 */
export function checkPlan(problem: CuttingProblem, plan: CuttingPlan): string[] {
  return [
    ...boardFaults(problem, plan),
    ...stockFaults(problem, plan),
    ...pieceFaults(problem, plan),
    ...moneyFaults(problem, plan),
  ];
}

function boardFaults(problem: CuttingProblem, plan: CuttingPlan): string[] {
  const pieces = new Map(problem.pieces.map(piece => [piece.id, piece]));
  const stock = new Map(problem.stock.map(board => [board.id, board]));
  return plan.boards.flatMap((board, place) => {
    const from = stock.get(board.stock);
    const name = `Board ${place + 1} (${board.stock})`;
    if (from === undefined) return [`${name} is not in the stock.`];
    const cuts = board.cuts.map(id => pieces.get(id));
    if (cuts.includes(undefined)) return [`${name} is cut into a piece nobody asked for.`];
    return oneBoard(
      name,
      { board, from, cuts: cuts.filter(cut => cut !== undefined) },
      problem.kerf,
    );
  });
}

type Cut = { board: CutBoard; from: Stock; cuts: readonly Piece[] };

function oneBoard(name: string, { board, from, cuts }: Cut, kerf: number): string[] {
  const faults: string[] = [];
  if (cuts.length === 0) faults.push(`${name} is taken but not cut.`);
  let at = from.trimStart;
  cuts.forEach((cut, place) => {
    if (place > 0) at += kerf;
    at += cut.length;
    const before = cuts[place - 1];
    if (before !== undefined && before.length < cut.length)
      faults.push(`${name} is not cut longest first.`);
  });
  const left = from.length - from.trimEnd - at;
  if (left < 0) faults.push(`${name} is ${-left} too short for its pieces.`);
  const offcut = Math.max(0, left - kerf);
  if (left >= 0 && board.offcut !== offcut) {
    faults.push(`${name} leaves an offcut of ${offcut}, not ${board.offcut}.`);
  }
  return faults;
}

function stockFaults(problem: CuttingProblem, plan: CuttingPlan): string[] {
  return problem.stock.flatMap(({ id, available }) => {
    const taken = plan.boards.filter(board => board.stock === id).length;
    return available !== undefined && taken > available
      ? [`${taken} boards ${id} are taken, but there are ${available}.`]
      : [];
  });
}

function pieceFaults(problem: CuttingProblem, plan: CuttingPlan): string[] {
  return problem.pieces.flatMap(({ id, count }) => {
    const cut = plan.boards.flatMap(board => board.cuts).filter(one => one === id).length;
    const absent = plan.missing
      .filter(one => one.piece === id)
      .reduce((sum, one) => sum + one.count, 0);
    return cut + absent === count
      ? []
      : [`Piece ${id} is cut ${cut} and missing ${absent} times, not ${count}.`];
  });
}

function moneyFaults(problem: CuttingProblem, plan: CuttingPlan): string[] {
  const prices = new Map(problem.stock.map(board => [board.id, board.cost]));
  const cost = plan.boards.reduce((sum, board) => sum + (prices.get(board.stock) ?? 0), 0);
  const gap = plan.proof.kind === 'none' ? plan.proof.gap : 0;
  const faults: string[] = [];
  if (plan.cost !== cost) faults.push(`The boards cost ${cost}, not ${plan.cost}.`);
  if (plan.cost - plan.lowerBound !== gap) {
    faults.push(`Cost ${plan.cost} and lower bound ${plan.lowerBound} do not differ by ${gap}.`);
  }
  return faults;
}
