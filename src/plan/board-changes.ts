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
 * What has to be bought besides, section by section, and for what no board is left. What slips asked for before is
 * planned anew with the measured length: such boards are not told twice, and what they are no longer is told too.
 */
export function boardChanges({ before, after, ...bench }: BoardsBeside): readonly string[] {
  return after.purchases.flatMap(({ section }) => {
    const was = boardsOf(section, { ...bench, plan: before });
    const now = boardsOf(section, { ...bench, plan: after });
    const more = moreThan(now.all, was.all);
    const less = moreThan(was.all, now.all).filter(({ length }) => has(was.afterSlips, length));
    const words = [
      ...(more.length > 0 ? [`to buy besides, ${boardWords(more, after)}`] : []),
      ...(less.length > 0 ? [`not to buy any more, ${boardWords(less, after)}`] : []),
      ...now.missing,
    ];
    return words.map(text => `${section}: ${text}`);
  });
}

type Boards = {
  /** Bought by the plan, or to be bought after a slip. */
  readonly all: readonly ToBuy[];
  readonly afterSlips: readonly ToBuy[];
  readonly missing: readonly string[];
};

function boardsOf(section: string, bench: Bench): Boards {
  const purchase = bench.plan.purchases.find(it => it.section === section);
  const planned = purchase?.buy.map(({ length, count }) => ({ length: length.value, count })) ?? [];
  const isTouched = bench.work.rackChanges.some(change => change.section === section);
  const now = isTouched ? rackNow(section, bench) : undefined;
  if (now?.last === undefined)
    return { all: planned, afterSlips: [], missing: purchase?.missing ?? [] };
  const afterSlips = eachToBuy(now.rack.boards);
  const { display } = bench.plan;
  const missing = now.last.missing.map(
    ({ count, mark, length }) => `no board for ${count} x ${mark} ${formatLength(length, display)}`,
  );
  return { all: [...planned, ...afterSlips], afterSlips, missing };
}

function has(boards: readonly ToBuy[], wanted: Mm): boolean {
  return countOf(boards, wanted) > 0;
}

function boardWords(boards: readonly ToBuy[], { display }: Plan): string {
  return listWords(
    boards.map(({ length, count }) => `${count} x ${formatBoardLength(length, display)}`),
  );
}
