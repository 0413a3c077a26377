import { isSpent, spend, type Work } from '../work.js';
import type { Indexed } from './indexed.js';
import { searchOrders } from './search.js';
import type { Path, State } from './state.js';

/** More ways to leave sessions out than this are not tried. */
const MOST_WAYS = 64;
/** Counted steps that a more usual order is worth. */
const PATIENCE = 100_000;

type Fewer = { readonly state: State; readonly proven: boolean };

/**
 * The same end with as few sessions as can be: sessions are left out, first one, then one more, as long as all
 * work still ends in time. More sessions never do harm, so when no way to leave out one more works, none does.
 */
export function fewerSessions(it: Indexed, best: State, work: Work): Fewer {
  const open = it.sessions.filter(({ from }) => from < best.finish).length;
  let state = asGiven(it, best, work);
  for (;;) {
    const used = usedSessions(state.turns).size;
    if (used <= fewestFor(it)) return { state, proven: true };
    const ways = subsets(open, used - 1);
    if (ways.length > MOST_WAYS) return { state, proven: false };
    const found = firstFitting(it, ways, { finish: best.finish, work });
    if (found === undefined) return { state, proven: !isSpent(work) };
    state = found;
  }
}

/** An order that people would not wonder at: as the tasks were given, as far as the end and the sessions allow. */
function asGiven(it: Indexed, best: State, work: Work): State {
  const again: Work = { done: 0, limit: Math.min(PATIENCE, work.limit - work.done) };
  const found = searchOrders(it, again, { finish: best.finish, patient: true }).best;
  spend(work, again.done);
  const isGood =
    found !== undefined && usedSessions(found.turns).size <= usedSessions(best.turns).size;
  return isGood ? found : best;
}

type Wanted = { readonly finish: number; readonly work: Work };

function firstFitting(
  it: Indexed,
  ways: readonly (readonly number[])[],
  { finish, work }: Wanted,
): State | undefined {
  for (const way of ways) {
    const closed = { from: 0, to: 0, quietFrom: 0 };
    const sessions = it.sessions.map((session, at) => (way.includes(at) ? session : closed));
    const few = { ...it, sessions: inTime(sessions) };
    const { best } = searchOrders(few, work, { finish });
    if (best !== undefined) return best;
    if (isSpent(work)) return undefined;
  }
  return undefined;
}

/** A session that is left out takes no time; it keeps its number and its place. */
function inTime(sessions: Indexed['sessions']): Indexed['sessions'] {
  let before = 0;
  return sessions.map(session => {
    if (session.to === 0) return { from: before, to: before, quietFrom: before };
    before = session.to;
    return session;
  });
}

function usedSessions(turns: Path | undefined): ReadonlySet<number> {
  const used = new Set<number>();
  for (let at = turns; at !== undefined; at = at.before) used.add(at.turn.session);
  return used;
}

/** Fewer sessions than this can't hold the work of whoever has most. */
function fewestFor({ ids, people, crews, minutes, sessions }: Indexed): number {
  const longest = sessions.map(({ from, to }) => to - from).sort((a, b) => b - a);
  const loads = Array.from({ length: people }, (_, person) =>
    ids.reduce((sum, _id, task) => {
      const own = crews[task]?.length === 1 && crews[task]?.[0]?.includes(person);
      return own ? sum + (minutes[task] ?? 0) : sum;
    }, 0),
  );
  const most = Math.max(0, ...loads);
  let held = 0;
  let count = 0;
  while (held < most && count < longest.length) {
    held += longest[count] ?? 0;
    count += 1;
  }
  return Math.max(count, ids.length === 0 ? 0 : 1);
}

/** All choices of `size` numbers below `count`, at most one more than are tried. */
function subsets(count: number, size: number): readonly (readonly number[])[] {
  const found: number[][] = [];
  const choose = (from: number, chosen: number[]): void => {
    if (found.length > MOST_WAYS) return;
    if (chosen.length === size) {
      found.push(chosen);
      return;
    }
    // Where too few numbers are left there is nothing to look for.
    const last = count - (size - chosen.length);
    for (let next = from; next <= last; next++) choose(next + 1, [...chosen, next]);
  };
  choose(0, []);
  return found;
}
