import { dayWords } from './clock-words.js';
import type { Event } from './events.js';
import type { Progress } from './workbook.js';
import { workedUntil } from './worked-time.js';

/** One day at the bench, as the journal has it. */
export type BenchDay = {
  /** "Tue, Nov 3, 2026". */
  readonly day: string;
  readonly fromMs: number;
  readonly toMs: number;
  readonly workedMs: number;
};

/**
 * The days on which something was done, in order. Looking around alone makes no day. Time counts as it
 * does for the whole build: silences up to 90 min, pauses not at all.
 */
export function daysAtBench(events: readonly Event[], zone?: string): readonly BenchDay[] {
  const days = new Map<string, BenchDay>();
  let paused: Progress['paused'];
  let workedMs = 0;
  let lastAtMs: number | undefined;
  for (const event of events) {
    const until = workedUntil(event, { workedMs, lastAtMs, paused });
    const added = until - workedMs;
    workedMs = until;
    lastAtMs = event.atMs;
    if (event.kind === 'paused') paused = event;
    if (event.kind === 'resumed') paused = undefined;
    if (isArrival(event) && added === 0) continue;
    const day = dayWords(event.atMs, zone);
    days.set(day, withEvent(days.get(day), { day, atMs: event.atMs, added }));
  }
  return [...days.values()];
}

const ARRIVALS: readonly Event['kind'][] = [
  'build-started',
  'helper-came',
  'resumed',
  'clock-set-back',
  'step-visited',
];

/** Coming in is no work yet. */
function isArrival({ kind }: Event): boolean {
  return ARRIVALS.includes(kind);
}

type Entry = { readonly day: string; readonly atMs: number; readonly added: number };

function withEvent(known: BenchDay | undefined, { day, atMs, added }: Entry): BenchDay {
  const before = known ?? { day, fromMs: atMs - added, toMs: atMs, workedMs: 0 };
  return {
    ...before,
    fromMs: Math.min(before.fromMs, atMs - added),
    toMs: Math.max(before.toMs, atMs),
    workedMs: before.workedMs + added,
  };
}
