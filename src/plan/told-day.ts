import type { Celsius, Minutes } from '../measure/quantities.js';
import { HOUR_MS } from '../measure/spans.js';

/** Work that a day has to suit. */
export type DayWork = 'glue' | 'seal';

/** What somebody read off today; what nobody could tell is left out. */
export type Weather = {
  /** Wood, glue and air, the coldest of them. */
  readonly now?: Celsius;
  /** Coldest until it has set, the night too. */
  readonly coldest?: Celsius;
  /** Where the wood lay last night. */
  readonly slept?: Celsius;
  /** By a meter in the wood. */
  readonly moisturePercent?: number;
  readonly humidityPercent?: number;
  /** Since midnight. */
  readonly sunsetMinutes?: Minutes;
};

/** The day as it was told, and when. */
export type ToldDay = Weather & { readonly atMs: number };

export type ToldDays = { readonly [Work in DayWork]?: ToldDay };

/**
 * What was told holds for one session: next time it is asked again. A judgment of ours: a long day in the garage,
 * and shorter than the night from a late glue-up to an early start.
 */
const HOLDS_MS = 8 * HOUR_MS;

/** The day as it was told, where that still holds. */
export function toldToday(days: ToldDays, work: DayWork, nowMs: number): ToldDay | undefined {
  const told = days[work];
  return told !== undefined && Math.abs(nowMs - told.atMs) < HOLDS_MS ? told : undefined;
}
