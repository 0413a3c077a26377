import type { Session } from './problem.js';

/** Where a stretch of work can begin: the minute, and the session it falls in. */
export type Place = { readonly from: number; readonly session: number };

/** Work without a break, and the hours it keeps to. */
export type Stretch = {
  readonly minutes: number;
  readonly loud: boolean;
  readonly fair?: boolean | undefined;
};

/** When work of this kind can be done in a session; it ends before it begins where it can't. */
function hoursFor({ from, to, quietFrom, fair }: Session, work: Stretch) {
  const end = work.loud ? Math.min(to, quietFrom) : to;
  if (!work.fair) return { from, to: end };
  return fair === undefined
    ? { from: to, to: from }
    : { from: Math.max(from, fair.from), to: Math.min(end, fair.to) };
}

/** The earliest minute from `at` on at which so much work fits into one session; none when it never does. */
export function placeFrom(
  sessions: readonly Session[],
  at: number,
  work: Stretch,
): Place | undefined {
  for (let number = firstOpen(sessions, at); number < sessions.length; number++) {
    const session = sessions[number];
    if (session === undefined) return undefined;
    const hours = hoursFor(session, work);
    const from = Math.max(at, hours.from);
    if (from + work.minutes <= hours.to) return { from, session: number };
  }
  return undefined;
}

/** The first session that is not over at this minute. */
function firstOpen(sessions: readonly Session[], at: number): number {
  let low = 0;
  let high = sessions.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((sessions[middle]?.to ?? 0) <= at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/**
 * The minute at which so much work is done that may be broken off at the end of every session: no order of
 * unbroken tasks is done earlier. Infinite when the sessions do not hold it.
 */
export function endOfBroken(sessions: readonly Session[], at: number, work: Stretch): number {
  let left = work.minutes;
  if (left === 0) return at;
  for (let number = firstOpen(sessions, at); number < sessions.length; number++) {
    const session = sessions[number];
    if (session === undefined) break;
    const { from: begin, to: end } = hoursFor(session, work);
    const from = Math.max(at, begin);
    if (end <= from) continue;
    if (left <= end - from) return from + left;
    left -= end - from;
  }
  return Number.POSITIVE_INFINITY;
}
