import { COMPUTED } from '../../../measure/figure.js';
import { figure } from '../../../measure/figure-text.js';
import { formatBoardLength } from '../../../measure/format-length.js';
import { formatMoney } from '../../../measure/money.js';
import type { Display } from '../../../measure/quantities.js';
import { tidy } from '../../../measure/round.js';
import { type ProofAsked, proofLines } from '../../../plan/proof-lines.js';
import type { CuttingPlan } from '../../../solve/cutting/problem.js';
import type { Answered, Given, WorkResult } from '../rule.js';
import { boardLines } from './board-lines.js';
import type { BoardsAsk } from './boards-ask.js';
import { boardsCsv } from './boards-csv.js';
import type { BoardsProblem } from './boards-problem.js';
import { boardNotes, proofWords } from './boards-words.js';
import { type CutUp, cutUp } from './cut-up.js';

type Solved = {
  readonly plan: CuttingPlan;
  /** The plan that the proof is about, and what is said where another one is taken. */
  readonly cheapest: CuttingPlan;
  readonly words: readonly string[];
  readonly given: Given;
};

/** The plan as text with the boards drawn, as JSON, and as a table. */
export function boardsAnswer(
  ask: BoardsAsk,
  asked: BoardsProblem,
  { plan, cheapest, words, given }: Solved,
): WorkResult {
  const { display } = given;
  const { priced } = asked;
  const boards = cutUp(asked, plan);
  const because = given.has('because') ? proofLines(proofAsked(asked), cheapest, display) : [];
  return {
    ok: true,
    verdict: [proofWords(cheapest, asked), ...words].join(' '),
    figures: boardFigures(boards, asked, { plan, display }),
    more: {},
    lines: ['', ...boardLines(boards, { display, kerf: ask.kerf, priced }), ...because, ''],
    notes: boardNotes(ask, boards, display),
    json: boardsJson(boards, plan, priced),
    csv: boardsCsv(boards, display),
  };
}

/** The stretches of a board with defects are boards of their own there. */
function proofAsked({ problem, priced, pieces, meaning }: BoardsProblem): ProofAsked {
  return {
    problem,
    priced,
    piece: id => pieces.get(id),
    board: id => {
      const means = meaning.get(id);
      return means && { length: means.to - means.from, onHand: means.onHand };
    },
  };
}

/** Costs in cents; null where boards have no price, since then the length was made least. */
function boardsJson(boards: readonly CutUp[], plan: CuttingPlan, priced: boolean) {
  return {
    cost: priced ? plan.cost : null,
    proof: plan.proof.kind,
    lower_bound: priced ? plan.lowerBound : null,
    boards: boards.map(({ from, to, onHand, cuts, offcut }) => ({
      length_mm: tidy(to - from),
      on_hand: onHand,
      cuts_mm: cuts.map(({ length }) => length),
      offcut_mm: offcut,
    })),
  };
}

function boardFigures(
  boards: readonly CutUp[],
  { priced }: BoardsProblem,
  { plan, display }: { readonly plan: CuttingPlan; readonly display: Display },
): readonly Answered[] {
  const bought = boards.filter(({ onHand }) => !onHand);
  const words = buyWords(bought, priced, display);
  if (bought.length > 0 && !priced) {
    const length = bought.reduce((sum, { board }) => sum + board.length, 0);
    return [
      {
        name: 'length',
        say: 'to buy',
        figure: figure(length, 'mm', `${words}; without prices the least length`, COMPUTED),
      },
    ];
  }
  const nothing = 'the boards on hand are enough';
  return [
    {
      name: 'cost',
      say: 'cost',
      figure: figure(plan.cost, 'cents', bought.length === 0 ? nothing : words, COMPUTED),
    },
  ];
}

/** `2 x 10 ft at 9.98 and 1 x 8 ft at 7.48`, longest first. */
function buyWords(bought: readonly CutUp[], priced: boolean, display: Display): string {
  const kinds = [...new Set(bought.map(({ board }) => board))].sort((a, b) => b.length - a.length);
  return kinds
    .map(kind => {
      const own = bought.filter(({ board }) => board === kind);
      const each = priced ? ` at ${formatMoney(own.at(0)?.price ?? 0)}` : '';
      return `${own.length} x ${formatBoardLength(kind.length, display)}${each}`;
    })
    .join(', ');
}
