import { formatBoardLength, formatLength } from '../measure/format-length.js';
import type { Mm } from '../measure/quantities.js';
import { listWords } from '../text/list.js';
import type { Plan } from './plan.js';
import { type Bench, rackNow } from './rack-now.js';
import { countOf, eachToBuy, moreThan, type ToBuy } from './to-buy.js';

/** Two plans for the same work at the bench: the one that counts, and the one with a measured length. */
export type BoardsBeside = Pick<Bench, 'work' | 'setting'> & {
  readonly before: Plan;
  readonly after: Plan;
};

/**
 * What has to be bought besides, section by section, and for what no board is left. What slips and earlier lengths
 * asked for is planned anew with the measured length: such boards are not told twice, and what they are no longer is told too.
 */
export function boardChanges({ before, after, ...bench }: BoardsBeside): readonly string[] {
  return after.purchases.flatMap(({ section }) => {
    const was = boardsOf(section, { ...bench, plan: before });
    const now = boardsOf(section, { ...bench, plan: after });
    const more = moreThan(now.all, was.all);
    const words = [
      ...(more.length > 0 ? [`to buy besides, ${boardWords(more, after)}`] : []),
      ...fewerWords(was, now, after),
      ...now.missing,
    ];
    return words.map(text => `${section}: ${text}`);
  });
}

/** Whoever has it bought meanwhile has to say so: nothing else knows that it lies there. */
function fewerWords(was: Boards, now: Boards, plan: Plan): readonly string[] {
  const less = moreThan(was.all, now.all).filter(({ length }) => has(was.besides, length));
  if (less.length === 0) return [];
  return [
    `not to buy any more, ${boardWords(less, plan)}. Bought already? Enter it: m at a step, "A board came to the rack"`,
  ];
}

type Boards = {
  /** Bought by the plan, or to be bought besides. */
  readonly all: readonly ToBuy[];
  /** Asked for by slips and measured lengths, and not there yet. */
  readonly besides: readonly ToBuy[];
  readonly missing: readonly string[];
};

function boardsOf(section: string, bench: Bench): Boards {
  const purchase = bench.plan.purchases.find(it => it.section === section);
  const planned = purchase?.buy.map(({ length, count }) => ({ length: length.value, count })) ?? [];
  const now = rackNow(section, bench);
  const besides = now === undefined ? [] : eachToBuy(now.rack.boards);
  const all = [...planned, ...besides];
  if (now?.last === undefined) return { all, besides, missing: purchase?.missing ?? [] };
  const { display } = bench.plan;
  const missing = now.last.missing.map(
    ({ count, mark, length }) => `no board for ${count} x ${mark} ${formatLength(length, display)}`,
  );
  return { all, besides, missing };
}

function has(boards: readonly ToBuy[], wanted: Mm): boolean {
  return countOf(boards, wanted) > 0;
}

function boardWords(boards: readonly ToBuy[], { display }: Plan): string {
  return listWords(
    boards.map(({ length, count }) => `${count} x ${formatBoardLength(length, display)}`),
  );
}
