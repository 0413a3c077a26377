import { HOUR_MS, MINUTE_MS } from '../measure/spans.js';
import { ringsAtMs } from '../workbook/timers.js';
import type { Timer } from '../workbook/workbook.js';
import type { Build, ShelfLine } from './screen.js';

/** A timer that still matters: it runs, or its time is up and nobody has said "heard". */
export type Alarm = {
  /** Among all builds. */
  readonly id: string;
  readonly timer: Timer;
  /** Name of the build it belongs to, where that is not the one that is open. */
  readonly elsewhere: string | undefined;
};

/** Rung at the end, then twice more, a minute apart. */
const BELLS_MS = [0, MINUTE_MS, 2 * MINUTE_MS];

/** All alarms, the one that ends first in front. */
export function alarmsOf(
  build: Build | undefined,
  shelf: readonly ShelfLine[],
  heard: ReadonlySet<string>,
): readonly Alarm[] {
  const timers = build?.progress.timers ?? [];
  const own = timers
    .filter(({ silenced }) => !silenced)
    .map(timer => ({ id: timer.id, timer, elsewhere: undefined }));
  const others = shelf.filter(({ id }) => id !== build?.workbook.id).flatMap(shelfAlarms);
  return [...own, ...others.filter(({ id }) => !heard.has(id))].sort(
    (one, other) => ringsAtMs(one.timer) - ringsAtMs(other.timer),
  );
}

function shelfAlarms({ id, name, timers }: ShelfLine): Alarm[] {
  return timers.map(timer => ({
    id: `${id}/${timer.name}/${timer.endsAtMs}`,
    timer: {
      id: timer.name,
      name: timer.name,
      step: '',
      startedAtMs: timer.endsAtMs,
      lastsMinutes: 0,
      then: timer.then,
      silenced: false,
    },
    elsewhere: name,
  }));
}

export function isRinging({ timer }: Alarm, nowMs: number): boolean {
  return ringsAtMs(timer) <= nowMs;
}

export type Moments = {
  /** When this was looked at before. */
  readonly beforeMs: number;
  readonly nowMs: number;
  readonly lastKeyMs: number;
};

/** Whether a first, second or third bell has come due since, and no key was pressed after the end. */
export function isBellDue(alarms: readonly Alarm[], moments: Moments): boolean {
  const { beforeMs, nowMs, lastKeyMs } = moments;
  return alarms
    .map(({ timer }) => ringsAtMs(timer))
    .filter(endMs => lastKeyMs < endMs)
    .flatMap(endMs => BELLS_MS.map(later => endMs + later))
    .some(dueMs => dueMs > beforeMs && dueMs <= nowMs);
}

/**
 * Milliseconds until something on the screen changes by itself, or nothing where nothing runs: each
 * second in the last two minutes, else every ten; each minute where a screen reader would read it all
 * again. An hour at most: Node can't wait for weeks.
 */
export function nextTickMs(
  alarms: readonly Alarm[],
  nowMs: number,
  readAloud = false,
): number | undefined {
  const waits = alarms.flatMap(({ timer }) => {
    const leftMs = ringsAtMs(timer) - nowMs;
    if (leftMs > 0) return [readAloud ? leftMs % MINUTE_MS || MINUTE_MS : untilChange(leftMs)];
    return BELLS_MS.map(later => leftMs + later).filter(wait => wait > 0);
  });
  return waits.length === 0 ? undefined : Math.min(...waits, HOUR_MS);
}

function untilChange(leftMs: number): number {
  const by = leftMs > 2 * MINUTE_MS ? 10_000 : 1000;
  return leftMs % by || by;
}
