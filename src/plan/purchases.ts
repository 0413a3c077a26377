import { ANSWERED, COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatBoardLength, formatLength } from '../measure/format-length.js';
import { formatMoney } from '../measure/money.js';
import type { Display, Mm } from '../measure/quantities.js';
import { fromUnits } from '../measure/round.js';
import { checkPlan } from '../solve/cutting/check-plan.js';
import { planCutting } from '../solve/cutting/plan-cutting.js';
import type { CutBoard, CuttingPlan } from '../solve/cutting/problem.js';
import type { BoughtBoard, BuyLine, CutRow, Purchase } from './plan.js';
import { type SectionProblem, sectionProblem } from './purchase-problem.js';
import type { Setting } from './setting.js';

/** Boards to buy and to cut, section by section in the order of the cut list. */
export function purchases(rows: readonly CutRow[], setting: Setting): readonly Purchase[] {
  const sections = [...new Set(rows.map(row => row.section))];
  return sections.map(section => {
    const own = rows.filter(row => row.section === section);
    return purchase(own, section, setting);
  });
}

function purchase(rows: readonly CutRow[], section: string, setting: Setting): Purchase {
  const asked = sectionProblem(rows, section, setting);
  const plan = planCutting(asked.problem);
  const wrong = checkPlan(asked.problem, plan);
  if (wrong.length > 0) throw new Error(`a cutting plan does not add up: ${wrong.join('; ')}`);
  const [first] = rows;
  if (!first) throw new Error('a section without pieces');
  const boards = boughtBoards(asked, plan, rows);
  return {
    section,
    width: first.width,
    thickness: first.thickness,
    boards,
    buy: buyLines(asked, boards, setting.display),
    priced: asked.priced,
    cost: figure(
      asked.priced ? plan.cost : 0,
      'cents',
      asked.priced
        ? 'boards to buy at the prices you gave'
        : 'no prices given: least length instead',
      COMPUTED,
    ),
    proof: { kind: plan.proof.kind, words: proofWords(plan, asked) },
    missing: missingWords(plan, rows, setting.display),
    kerf: setting.saw.kerf.value,
    trim: setting.trim,
  };
}

function boughtBoards(
  asked: SectionProblem,
  plan: CuttingPlan,
  rows: readonly CutRow[],
): readonly BoughtBoard[] {
  const lengthByMark = new Map(rows.map(row => [row.mark, row.length.value]));
  const ordered = [...plan.boards].sort(
    (a, b) => longestCut(b, lengthByMark) - longestCut(a, lengthByMark),
  );
  return ordered.map((board, at) => {
    const from = asked.stock.get(board.stock);
    if (!from) throw new Error(`no board ${board.stock}`);
    const cuts = board.cuts.map(mark => ({ mark, length: lengthByMark.get(mark) ?? 0 }));
    return {
      number: at + 1,
      length: from.length,
      onHand: from.onHand,
      cuts,
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

function buyLines(
  asked: SectionProblem,
  boards: readonly BoughtBoard[],
  display: Display,
): readonly BuyLine[] {
  const bought = boards.filter(board => !board.onHand);
  const lengths = [...new Set(bought.map(board => board.length))].sort((a, b) => b - a);
  return lengths.map(length => {
    const each = asked.priced ? priceOf(asked, length) : 0;
    const words = asked.priced
      ? `${formatBoardLength(length, display)} at ${formatMoney(each)}`
      : 'no price given';
    return {
      length: figure(length, 'mm', 'a length the store sells', ANSWERED),
      count: bought.filter(board => board.length === length).length,
      each: figure(each, 'cents', words, ANSWERED),
    };
  });
}

function priceOf(asked: SectionProblem, length: Mm): number {
  const ids = [...asked.stock]
    .filter(([, it]) => !it.onHand && it.length === length)
    .map(([id]) => id);
  const costs = asked.problem.stock.filter(it => ids.includes(it.id)).map(it => it.cost);
  return Math.min(...costs);
}

function proofWords(plan: CuttingPlan, asked: SectionProblem): string {
  const what = asked.priced ? 'costs less' : 'needs less length';
  if (plan.missing.length > 0) return 'some pieces have no board';
  if (plan.proof.kind === 'bound') return `proven: no other way ${what}`;
  if (plan.proof.kind === 'search') return `proven by search: no other way ${what}`;
  const percent = plan.lowerBound > 0 ? (100 * (plan.cost - plan.lowerBound)) / plan.lowerBound : 0;
  return `not proven: at most ${percent.toFixed(1)} % above the best possible`;
}

function missingWords(
  plan: CuttingPlan,
  rows: readonly CutRow[],
  display: Display,
): readonly string[] {
  return plan.missing.map(({ piece, count, why }) => {
    const row = rows.find(it => it.mark === piece);
    const length = row ? formatLength(row.length.value, display) : '';
    return why === 'longer-than-every-board'
      ? `${count} of ${piece}, ${length}: longer than every board after squaring`
      : `${count} of ${piece}, ${length}: no board left`;
  });
}
