import type { Session } from './problem.js';

/** Where a stretch of work can begin: the minute, and the session it falls in. */
export type Place = { readonly from: number; readonly session: number };

/** The earliest minute from `at` on at which so much work fits into one session; none when it never does. */
export function placeFrom(
  sessions: readonly Session[],
  at: number,
  { minutes, loud }: { readonly minutes: number; readonly loud: boolean },
): Place | undefined {
  for (let number = firstOpen(sessions, at); number < sessions.length; number++) {
    const session = sessions[number];
    if (session === undefined) return undefined;
    const from = Math.max(at, session.from);
    const end = loud ? Math.min(session.to, session.quietFrom) : session.to;
    if (from + minutes <= end) return { from, session: number };
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
export function endOfBroken(
  sessions: readonly Session[],
  at: number,
  { minutes, loud }: { readonly minutes: number; readonly loud: boolean },
): number {
  let left = minutes;
  if (left === 0) return at;
  for (let number = firstOpen(sessions, at); number < sessions.length; number++) {
    const session = sessions[number];
    if (session === undefined) break;
    const from = Math.max(at, session.from);
    const end = loud ? Math.min(session.to, session.quietFrom) : session.to;
    if (end <= from) continue;
    if (left <= end - from) return from + left;
    left -= end - from;
  }
  return Number.POSITIVE_INFINITY;
}
