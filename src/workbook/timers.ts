import { formatMinutes } from '../measure/duration.js';
import type { Minutes } from '../measure/quantities.js';
import { MINUTE_MS } from '../measure/spans.js';
import type { Step, StepTimer } from '../plan/plan.js';
import { clockWords } from './clock-words.js';
import type { Event } from './events.js';
import type { Progress, Timer } from './workbook.js';

const HOUR: Minutes = 60;
/** From here on "12 min left" gives way to the time on the clock. */
const COUNTED_MINUTES: Minutes = 2 * HOUR;

/** The instant, in epoch ms, at which it rings. */
export function endsAtMs({
  startedAtMs,
  lastsMinutes,
}: Pick<Timer, 'startedAtMs' | 'lastsMinutes'>): number {
  return startedAtMs + lastsMinutes * MINUTE_MS;
}

/**
 * What is left, in minutes; 0 once it is up. A clock that was set back makes the wait longer, never
 * shorter.
 */
export function remainingMinutes(timer: Timer, nowMs: number): Minutes {
  return Math.max(0, (endsAtMs(timer) - nowMs) / MINUTE_MS);
}

/** Has the time run out? At the very instant it ends, yes. */
export function isUp(timer: Timer, nowMs: number): boolean {
  return endsAtMs(timer) <= nowMs;
}

/** The instant at which somebody is to hear it: its end, or later where it was put off. */
export function ringsAtMs(timer: Timer): number {
  return Math.max(endsAtMs(timer), timer.snoozedUntilMs ?? 0);
}

/** Timers that are up and that nobody has silenced yet, the one that ended first at the front. */
export function ringing({ timers }: Progress, nowMs: number): readonly Timer[] {
  return timers
    .filter(timer => ringsAtMs(timer) <= nowMs && !timer.silenced)
    .sort((one, other) => endsAtMs(one) - endsAtMs(other));
}

/**
 * A timer in words: "12 min left" (a begun minute counts whole), from two hours on "ready 17:30" or
 * "ready Tue 07:30", and afterwards "ready now", "ready 12 min ago", "ready 3 h ago". `zone` is the
 * time zone of the wall clock, `Europe/Berlin` for example; without it the machine's own.
 */
export function timerWords(timer: Timer, nowMs: number, zone?: string): string {
  if (isUp(timer, nowMs)) {
    const since = sinceWords((nowMs - endsAtMs(timer)) / MINUTE_MS);
    const again = ringsAtMs(timer);
    return again > nowMs ? `${since}, rings again ${clockWords(again, nowMs, zone)}` : since;
  }
  const left = remainingMinutes(timer, nowMs);
  if (left <= COUNTED_MINUTES) return `${formatMinutes(Math.ceil(left))} left`;
  return `ready ${clockWords(endsAtMs(timer), nowMs, zone)}`;
}

function sinceWords(sinceMinutes: Minutes): string {
  if (sinceMinutes < 1) return 'ready now';
  const exact = Math.floor(sinceMinutes);
  const rough = exact < COUNTED_MINUTES ? exact : Math.floor(exact / HOUR) * HOUR;
  return `ready ${formatMinutes(rough)} ago`;
}

/** That a timer of a step was started then. */
export function timerStarted(
  { id, name, minutes, then }: StepTimer,
  step: Pick<Step, 'id'>,
  atMs: number,
): Event {
  return {
    kind: 'timer-started',
    atMs,
    timer: id,
    name,
    lastsMinutes: minutes,
    then,
    step: step.id,
  };
}
