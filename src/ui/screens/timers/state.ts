import { MINUTE_MS } from '../../../measure/spans.js';
import { endsAtMs, ringing } from '../../../workbook/timers.js';
import type { Progress, Timer } from '../../../workbook/workbook.js';
import type { Build, Context, Key, Outcome } from '../../screen.js';

export type TimersState = {
  /** Row that is marked. */
  readonly row: number;
  /** Id of the timer that is about to be stopped. */
  readonly stopping: string | undefined;
};

export function open(): TimersState {
  return { row: 0, stopping: undefined };
}

/** All timers of the build, the one that ends first in front; those heard already at the end. */
export function shownTimers({ timers }: Progress): readonly Timer[] {
  return timers.toSorted(
    (one, other) =>
      Number(one.silenced) - Number(other.silenced) || endsAtMs(one) - endsAtMs(other),
  );
}

/** The timer that keys go to. */
export function markedTimer({ row }: TimersState, build: Build): Timer | undefined {
  const timers = shownTimers(build.progress);
  return timers[Math.min(row, timers.length - 1)];
}

export function press(state: TimersState, key: Key, at: Context): Outcome<TimersState> {
  const { build } = at;
  if (build === undefined) return { state, asks: [{ kind: 'leave' }] };
  const count = build.progress.timers.length;
  const row = Math.max(0, Math.min(state.row, count - 1));
  if (state.stopping !== undefined) return pressStopping(state, state.stopping, key, at);
  switch (key.name) {
    case 'up':
      return { state: { ...state, row: Math.max(0, row - 1) }, asks: [] };
    case 'down':
      return { state: { ...state, row: Math.max(0, Math.min(count - 1, row + 1)) }, asks: [] };
    case 'escape':
    case 'backspace':
    case 'left':
    case 'page-up':
      return { state, asks: [{ kind: 'leave' }] };
    case 'space':
    case 'enter':
    case 'page-down':
      return heard(state, at, { build, elseLeave: true });
    case 'character':
      return pressSign({ ...state, row }, key.text, { build, at });
    default:
      return { state, asks: [] };
  }
}

type Bench = { readonly build: Build; readonly at: Context };

function pressSign(state: TimersState, sign: string, { build, at }: Bench): Outcome<TimersState> {
  const number = Number(sign);
  if (number >= 1 && number <= build.progress.timers.length) {
    return { state: { ...state, row: number - 1 }, asks: [] };
  }
  switch (sign) {
    case 's':
      return heard(state, at, { build, elseLeave: false });
    case 'z':
      return snoozed(state, at, build);
    case 'x':
      return { state: { ...state, stopping: markedTimer(state, build)?.id }, asks: [] };
    case '?':
      return { state, asks: [{ kind: 'go', to: 'keys' }] };
    default:
      return { state, asks: [] };
  }
}

/** The marked timer is heard, where it rings; else the first that rings; else there is no more to do. */
function heard(
  state: TimersState,
  { nowMs }: Context,
  { build, elseLeave }: { readonly build: Build; readonly elseLeave: boolean },
): Outcome<TimersState> {
  const timer = ringingTimer(state, build, nowMs);
  if (timer === undefined) return { state, asks: elseLeave ? [{ kind: 'leave' }] : [] };
  const event = { kind: 'timer-silenced', atMs: nowMs, timer: timer.id } as const;
  return { state, asks: [{ kind: 'record', events: [event] }] };
}

/** Long enough to finish what is in hand, short enough not to forget. */
const SNOOZE_MS = 10 * MINUTE_MS;

/** The marked timer rings again in ten minutes, where it rings; else the first that rings. */
function snoozed(state: TimersState, { nowMs }: Context, build: Build): Outcome<TimersState> {
  const timer = ringingTimer(state, build, nowMs);
  if (timer === undefined) return { state, asks: [] };
  const untilMs = nowMs + SNOOZE_MS;
  const event = { kind: 'timer-snoozed', atMs: nowMs, timer: timer.id, untilMs } as const;
  return { state, asks: [{ kind: 'record', events: [event] }] };
}

function ringingTimer(state: TimersState, build: Build, nowMs: number): Timer | undefined {
  const rings = ringing(build.progress, nowMs);
  const marked = markedTimer(state, build);
  return rings.find(({ id }) => id === marked?.id) ?? rings[0];
}

/** A running timer is gone for good once it is stopped: asked for twice. */
function pressStopping(
  state: TimersState,
  timer: string,
  key: Key,
  { nowMs }: Context,
): Outcome<TimersState> {
  const calm = { ...state, stopping: undefined };
  const meant = key.name === 'enter' || (key.name === 'character' && key.text === 'x');
  if (!meant) return { state: calm, asks: [] };
  const event = { kind: 'timer-stopped', atMs: nowMs, timer } as const;
  return { state: calm, asks: [{ kind: 'record', events: [event] }] };
}
