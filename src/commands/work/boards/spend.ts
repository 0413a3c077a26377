import { formatLength } from '../../../measure/format-length.js';
import { formatMoney, parseMoney } from '../../../measure/money.js';
import { type Parsed, parsed } from '../../../measure/parsed.js';
import type { Cents, Display } from '../../../measure/quantities.js';
import { fromUnits, snapDown } from '../../../measure/round.js';
import { checkPlan } from '../../../solve/cutting/check-plan.js';
import type { CuttingPlan } from '../../../solve/cutting/problem.js';
import { amountOf, spendMore, type Wish } from '../../../solve/cutting-spend/spend-more.js';
import { count } from '../../../text/plural.js';
import type { Given } from '../rule.js';
import type { BoardsProblem } from './boards-problem.js';

export const WISHES = ['boards', 'settings', 'offcut'] as const;

/** A plan, and what is said about the money that it takes beyond the cheapest one. */
export type Spent = { readonly plan: CuttingPlan; readonly words: readonly string[] };

/** The plan that somebody pays a little more for; the cheapest one where nothing may be spent or it brings nothing. */
export function spent(asked: BoardsProblem, cheapest: CuttingPlan, given: Given): Parsed<Spent> {
  if (!given.has('spend')) return parsed({ plan: cheapest, words: [] });
  const most = parseMoney(given.word('spend'));
  if (!most.ok) return most;
  const wish = WISHES.find(it => it === given.word('for'));
  if (wish === undefined) throw new Error(`for ${given.word('for')} was let through`);
  const spending = { wish, most: most.value, effort: given.number('effort') };
  const plan = spendMore(asked.problem, cheapest, spending);
  if (plan === undefined)
    return parsed({ plan: cheapest, words: [nothingWords(wish, most.value)] });
  const wrong = checkPlan(asked.problem, plan);
  if (wrong.length > 0) throw new Error(`a dearer plan does not add up: ${wrong.join('; ')}`);
  return parsed({
    plan,
    words: [broughtWords(wish, { asked, cheapest, plan, display: given.display })],
  });
}

const NOTHING: Readonly<Record<Wish, string>> = {
  boards: 'fewer boards',
  settings: 'fewer settings of the stop',
  offcut: 'a longer offcut',
};

function nothingWords(wish: Wish, most: Cents): string {
  return `Nothing was found for up to ${formatMoney(most)} more that has ${NOTHING[wish]}: this is the cheapest plan.`;
}

type Brought = {
  readonly asked: BoardsProblem;
  readonly cheapest: CuttingPlan;
  readonly plan: CuttingPlan;
  readonly display: Display;
};

/** `2.50 more than the cheapest plan, 22.44, brings one offcut of 41 in instead of 12-7/8 in.` */
function broughtWords(wish: Wish, { asked, cheapest, plan, display }: Brought): string {
  const [before = 0, after = 0] = [cheapest, plan].map(it => amountOf(wish, asked.problem, it));
  const length = (units: number) => formatLength(snapDown(fromUnits(units), display.grid), display);
  const what: Readonly<Record<Wish, string>> = {
    boards: `${count(-after, 'board')} to buy instead of ${-before}`,
    settings: `${count(-after, 'setting')} of the stop, equal boards in a row, instead of ${-before}`,
    offcut: `one offcut of ${length(after)} instead of ${length(before)}`,
  };
  return `${formatMoney(plan.cost - cheapest.cost)} more than the cheapest plan, ${formatMoney(cheapest.cost)}, brings ${what[wish]}. The best found, not proven.`;
}
