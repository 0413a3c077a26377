import { ANSWERED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatBoardLength } from '../measure/format-length.js';
import { formatMoney } from '../measure/money.js';
import type { Display, Mm } from '../measure/quantities.js';
import type { BoughtBoard, BuyLine } from './plan.js';
import type { SectionProblem } from './purchase-problem.js';

/** Lines for the store, longest boards first; what is on hand is not bought. */
export function buyLines(
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

/** How many boards the store hands over; strips ripped out of one board are one. */
export function boughtCount({ buy }: { readonly buy: readonly BuyLine[] }): number {
  return buy.reduce((sum, line) => sum + line.count, 0);
}
