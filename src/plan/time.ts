import type { CalendarDay, Weekday } from '../measure/calendar.js';
import type { Figure } from '../measure/figure.js';

/** How long it takes, and how that falls into the hours that somebody has. Types only. */
export type TimePlan = {
  readonly hands: Figure;
  readonly waits: readonly { readonly name: string; readonly minutes: number }[];
  readonly sessions: readonly Session[];
  readonly people: number;
  /** From the beginning of the first session to the last move, and why it is not earlier. */
  readonly finish: Figure;
  /** No order of the same work is done earlier. */
  readonly proven: boolean;
  /** Why the work could not be laid into sessions; empty where it could. */
  readonly trouble: string;
  /** Saws and other loud tools rest from then on, in minutes since midnight. */
  readonly noiseUntil: number;
};

/** One stay in the garage. Clock times are minutes since midnight of its day. */
export type Session = {
  readonly number: number;
  /** Where the first day is known. */
  readonly date?: CalendarDay;
  readonly weekday?: Weekday;
  /** After the last of the dates that were named. */
  readonly beyond?: boolean;
  /** The hours that somebody has. */
  readonly from: number;
  readonly to: number;
  readonly steps: readonly string[];
  /** From the first move to the last. */
  readonly minutes: number;
  /** What each does when, in the order of the clock. */
  readonly turns: readonly Turn[];
  /** What must stand untouched until the next session. */
  readonly endsWith: string;
  /** All waits that reach beyond its end, with the clock time of the session's day at which they are over. */
  readonly stands: readonly {
    readonly timer: string;
    readonly name: string;
    readonly until: number;
  }[];
};

/** A step, or a part of one that is counted, done by somebody from then until then. */
export type Turn = {
  readonly step: string;
  readonly who: 'lead' | 'helper' | 'both';
  readonly from: number;
  readonly to: number;
  /** Which part of a step that is spread over several turns: 1 of 3. */
  readonly part?: { readonly number: number; readonly of: number };
};
