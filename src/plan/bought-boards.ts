import type { Mm } from '../measure/quantities.js';
import { fromUnits } from '../measure/round.js';
import type { CutBoard, CuttingPlan } from '../solve/cutting/problem.js';
import { inCuttingOrder, turnsOf } from './cutting-order.js';
import type { BoughtBoard, CutRow } from './plan.js';
import type { SectionProblem } from './purchase-problem.js';

/** The boards of a cutting plan back in mm, those with the longest pieces first; their pieces in the order of sawing. */
export function boughtBoards(
  asked: SectionProblem,
  plan: CuttingPlan,
  rows: readonly CutRow[],
): readonly BoughtBoard[] {
  const lengthByMark = new Map(rows.map(row => [row.mark, row.length.value]));
  const turns = turnsOf(rows);
  const ordered = [...plan.boards].sort(
    (a, b) => longestCut(b, lengthByMark) - longestCut(a, lengthByMark),
  );
  return ordered.map((board, at) => {
    const from = asked.stock.get(board.stock);
    if (!from) throw new Error(`no board ${board.stock}`);
    const pieces = board.cuts.map(mark => ({ mark, length: lengthByMark.get(mark) ?? 0 }));
    return {
      number: at + 1,
      length: from.length,
      onHand: from.onHand,
      cuts: inCuttingOrder(pieces, turns),
      offcut: fromUnits(board.offcut),
      slack: slackOf(asked, board),
    };
  });
}

/** What is left over can also be left at the first end: so far in the first cut may start. */
function slackOf(asked: SectionProblem, board: CutBoard): Mm {
  const { kerf, pieces, stock } = asked.problem;
  const lengthById = new Map(pieces.map(piece => [piece.id, piece.length]));
  const entry = stock.find(it => it.id === board.stock);
  if (!entry) return 0;
  const used = board.cuts.reduce((sum, id) => sum + (lengthById.get(id) ?? 0) + kerf, -kerf);
  return fromUnits(Math.max(0, entry.length - entry.trimStart - entry.trimEnd - used));
}

function longestCut(board: CutBoard, lengthByMark: ReadonlyMap<string, Mm>): Mm {
  return Math.max(0, ...board.cuts.map(mark => lengthByMark.get(mark) ?? 0));
}
