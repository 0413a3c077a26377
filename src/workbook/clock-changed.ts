import { HOUR_MS } from '../measure/spans.js';
/** Two clocks read at once: the one on the wall (epoch ms), and one that only ever runs on. */
export type Clocks = { readonly wallMs: number; readonly steadyMs: number };

export type ClockChange =
  | 'no'
  /** The machine was asleep; timers on the wall clock are right as they stand. */
  | 'slept'
  /** Somebody or something moved the wall clock; a wait may be longer or shorter than it says. */
  | 'set back'
  | 'set forward';

const SECOND_MS = 1000;
/** Time servers nudge a clock by less than this; it does no harm to a wait. */
const NUDGE_MS = 5 * SECOND_MS;
/** Longer than anybody leaves a lid shut in the middle of a build. */
const LONGEST_SLEEP_MS = 60 * 24 * HOUR_MS;
/** A clock set to another time zone moves by whole hours, up to 26 of them. */
const ZONES_MS = 26 * HOUR_MS;

/**
 * Did the wall clock jump between two looks at both clocks? Call it at each tick. Asleep and set
 * forward look alike where the steady clock stands still during sleep: a jump by whole hours, or by
 * more than 60 days, counts as set forward, so that a doubtful wait is looked at. When it says `set
 * back` or `set forward`, tell the builder to check glue and sealer against a watch; the timer
 * itself stays as it is.
 * @example clockChanged({ wallMs: 0, steadyMs: 0 }, { wallMs: 3_600_000, steadyMs: 10 }) // 'set forward'
 */
export function clockChanged(previous: Clocks, now: Clocks): ClockChange {
  const jump = clockJumpMs(previous, now);
  if (jump < -NUDGE_MS) return 'set back';
  if (jump <= NUDGE_MS) return 'no';
  return jump > LONGEST_SLEEP_MS || isZoneStep(jump) ? 'set forward' : 'slept';
}

/** By how much the wall clock went on more than the steady one, in ms; negative where it was set back. */
export function clockJumpMs(previous: Clocks, now: Clocks): number {
  return now.wallMs - previous.wallMs - (now.steadyMs - previous.steadyMs);
}

function isZoneStep(jump: number): boolean {
  const hours = Math.round(jump / HOUR_MS);
  return hours > 0 && jump <= ZONES_MS && Math.abs(jump - hours * HOUR_MS) <= SECOND_MS;
}
