import { ANSWERED, COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { lessThan } from '../measure/tolerance.js';
import type { BoughtBoard } from './plan.js';
import type { Spare } from './purchase.js';
import type { SectionProblem } from './purchase-problem.js';
import { oneBoardMore } from './rack-spare.js';

/** Less slack than this does not bear a split end, nor a second squaring cut; a judgment of ours. */
const TIGHT: Mm = inches(1 / 2);

/**
 * Boards with less than 1/2 in of slack, and the cheapest board that saves the longest of their pieces. Nothing where
 * no board is tight, where an offcut of the plan would do, or where the store has no such board.
 */
export function spareFor(asked: SectionProblem, boards: readonly BoughtBoard[]): Spare | undefined {
  const tight = boards.filter(({ slack }) => lessThan(slack, TIGHT));
  const longest = Math.max(0, ...tight.flatMap(({ cuts }) => cuts.map(({ length }) => length)));
  if (tight.length === 0 || boards.some(({ offcut }) => !lessThan(offcut, longest)))
    return undefined;
  const more = oneBoardMore(asked, longest);
  if (more === undefined) return undefined;
  return {
    tight: tight.map(({ number }) => number),
    length: figure(
      more.length,
      'mm',
      'the cheapest length that saves the longest of them',
      COMPUTED,
    ),
    cost: figure(
      asked.priced ? more.cost : 0,
      'cents',
      asked.priced ? 'at the price you gave' : 'no price given',
      ANSWERED,
    ),
  };
}
