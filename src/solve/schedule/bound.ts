import { endOfBroken, placeFrom } from './clock.js';
import { type Indexed, stretchOf } from './indexed.js';
import type { State } from './state.js';

/** For each task the minutes that have to pass after its end: the longest chain of work and waits behind it. */
export function tails({ ids, after, minutes }: Indexed): readonly number[] {
  const tail = ids.map(() => 0);
  for (let task = ids.length - 1; task >= 0; task--) {
    for (const link of after[task] ?? []) {
      const behind = link.minutes + (minutes[link.task] ?? 0) + (tail[link.task] ?? 0);
      tail[task] = Math.max(tail[task] ?? 0, behind);
    }
  }
  return tail;
}

/**
 * Nobody is done earlier than this, however the rest is ordered: each chain of work and waits as the sessions let
 * it run, and for each person the work that is theirs alone, as if it could be broken off at the end of a session.
 * Infinite when the sessions do not hold it.
 */
export function boundOf(it: Indexed, state: State, tail: readonly number[]): number {
  const heads = headsOf(it, state);
  if (heads === undefined) return Number.POSITIVE_INFINITY;
  let bound = state.finish;
  heads.forEach((head, task) => {
    if (!state.done[task])
      bound = Math.max(bound, head + (it.minutes[task] ?? 0) + (tail[task] ?? 0));
  });
  for (let person = 0; person < it.people; person++)
    bound = Math.max(bound, loadOf(person, { it, state, heads, tail }));
  return bound;
}

/** The earliest minute at which each open or blocked task can begin; nothing when one never can. */
function headsOf(it: Indexed, { done, free, ready }: State): readonly number[] | undefined {
  const heads = [...ready];
  for (let task = 0; task < it.ids.length; task++) {
    if (done[task]) continue;
    let at = Math.max(heads[task] ?? 0, crewFree(it.crews[task] ?? [], free));
    for (const link of it.before[task] ?? []) {
      if (done[link.task]) continue;
      at = Math.max(at, (heads[link.task] ?? 0) + (it.minutes[link.task] ?? 0) + link.minutes);
    }
    const place = placeFrom(it.sessions, at, stretchOf(it, task));
    if (place === undefined) return undefined;
    heads[task] = place.from;
  }
  return heads;
}

function crewFree(crews: readonly (readonly number[])[], free: readonly number[]): number {
  let soonest = Number.POSITIVE_INFINITY;
  for (const crew of crews) {
    let late = 0;
    for (const person of crew) late = Math.max(late, free[person] ?? 0);
    soonest = Math.min(soonest, late);
  }
  return soonest;
}

type Ahead = {
  readonly it: Indexed;
  readonly state: State;
  readonly heads: readonly number[];
  readonly tail: readonly number[];
};

/** What one person still has to do: its end, with what has to follow; quiet and loud work apart too. */
function loadOf(person: number, { it, state, heads, tail }: Ahead): number {
  const own = it.ids
    .map((_, task) => task)
    .filter(task => !state.done[task] && it.crews[task]?.length === 1)
    .filter(task => it.crews[task]?.[0]?.includes(person));
  if (own.length === 0) return 0;
  const from = (task: number) => heads[task] ?? 0;
  const behind = (task: number) => tail[task] ?? 0;
  const byTail = own.toSorted((a, b) => behind(b) - behind(a));
  const byHead = own.toSorted((a, b) => from(b) - from(a));
  const loud = own.filter(task => it.loud[task]);
  const growing = { it, from, behind };
  return Math.max(
    growingLoad(byTail, growing, false),
    growingLoad(byHead, growing, false),
    growingLoad(loud, growing, true),
  );
}

type Growing = {
  readonly it: Indexed;
  readonly from: (task: number) => number;
  readonly behind: (task: number) => number;
};

/** The first task, the first two, the first three …: none of these groups ends with all that follows before this. */
function growingLoad(tasks: readonly number[], of: Growing, loud: boolean): number {
  let minutes = 0;
  let earliest = Number.POSITIVE_INFINITY;
  let least = Number.POSITIVE_INFINITY;
  let bound = 0;
  for (const task of tasks) {
    minutes += of.it.minutes[task] ?? 0;
    earliest = Math.min(earliest, of.from(task));
    least = Math.min(least, of.behind(task));
    const end = endOfBroken(of.it.sessions, earliest, { minutes, loud });
    bound = Math.max(bound, end + least);
  }
  return bound;
}
