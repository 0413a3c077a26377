import type { Figure } from '../measure/figure.js';
import { formatBoardLength, formatLengthExact } from '../measure/format-length.js';
import { formatMoney } from '../measure/money.js';
import type { Display } from '../measure/quantities.js';
import { count } from '../text/plural.js';
import type { BuyLine } from './plan.js';
import type { RipCut, RipWay } from './ripping.js';

type RipTold = {
  readonly section: string;
  readonly from: string;
  readonly way: RipWay;
  readonly cut: RipCut;
  /** What the strips would cost as they are sold. */
  readonly bought: Figure;
  readonly cost: number;
  readonly display: Display;
};

/** What to rip, how to set the fence, what it saves, and who does it. */
export function ripWords(
  { section, from, way, cut, bought, cost, display }: RipTold,
  buy: readonly BuyLine[],
): readonly string[] {
  const length = (value: number) => formatLengthExact(value, display);
  const boards = buy
    .map(line => `${line.count} of ${formatBoardLength(line.length.value, display)}`)
    .join(' and ');
  const turned = way.turned ? ' Turn each strip: its width is the thickness of the board.' : '';
  return [
    `Rip ${from}, ${boards}, into ${count(way.strips, 'strip')} each: ${formatMoney(cost)} instead of ${formatMoney(bought.value)} for ${section}.`,
    `Take ${length(cut.edge)} off one edge first; then the fence stands at ${length(way.fence)}. Each cut takes ${length(cut.kerf)}.${turned} Cut to length after ripping.`,
    `Lead only, on a table saw: it has a step of its own, before the crosscuts. Without one buy ${section}.`,
  ];
}

/** How good the choice of boards to rip is known to be. */
export function ripProofWords(cost: number, lowerBound: number): string {
  return cost <= lowerBound
    ? 'proven: no other way of ripping costs less'
    : `at most ${formatMoney(cost - lowerBound)} above the cheapest way of ripping`;
}
