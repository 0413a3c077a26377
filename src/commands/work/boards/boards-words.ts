import { formatLengthExact } from '../../../measure/format-length.js';
import { formatMoney } from '../../../measure/money.js';
import type { Display } from '../../../measure/quantities.js';
import type { CuttingPlan } from '../../../solve/cutting/problem.js';
import { count } from '../../../text/plural.js';
import type { BoardsAsk } from './boards-ask.js';
import type { BoardsProblem } from './boards-problem.js';
import type { CutUp } from './cut-up.js';
import { nearMisses, nearMissWords, squaring } from './near-miss.js';

/** How good the plan is known to be. */
export function proofWords({ proof, cost, lowerBound }: CuttingPlan, { priced }: BoardsProblem) {
  const less = priced ? 'costs less' : 'takes less length';
  if (proof.kind === 'bound') return `Proven: no other way ${less}.`;
  if (proof.kind === 'search')
    return `Proven by search, ${count(proof.cases, 'case')}: no other way ${less}.`;
  const percent = lowerBound > 0 ? ` (${((100 * proof.gap) / lowerBound).toFixed(1)}%)` : '';
  const gap = priced ? formatMoney(proof.gap) : `${formatMoney(proof.gap)} mm`;
  return cost === lowerBound
    ? `Not proven.`
    : `Not proven: at most ${gap}${percent} above the best there can be. A larger --effort looks longer.`;
}

const MOST_TRAPS = 3;

/** What squaring and blade take, which boards only seem long enough, and what nobody can know from here. */
export function boardNotes(
  ask: BoardsAsk,
  boards: readonly CutUp[],
  display: Display,
): readonly string[] {
  const length = (value: number) => formatLengthExact(value, display);
  const ends = ask.trimEnd > 0 ? 'both ends' : 'one end';
  const squared =
    squaring(ask) > 0
      ? `Each board loses ${length(ask.trimStart)} at ${ends} to be square, and ${length(ask.kerf)} to every cut.`
      : `Ends are taken as square; every cut takes ${length(ask.kerf)}.`;
  const slack = boards.some(board => board.slack > 0)
    ? ['Slack: so much further in the first cut may fall, to dodge a knot.']
    : [];
  const traps = nearMisses(ask, display)
    .slice(0, MOST_TRAPS)
    .map(miss => nearMissWords(miss, ask, display));
  return [
    squared,
    ...slack,
    ...traps,
    'Keep the blade on the waste side of every line. Not checked: what your boards really measure. Boards are sold longer and shorter than their name, so measure each before the first cut.',
  ];
}
