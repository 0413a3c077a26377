import type { Celsius, Minutes } from '../measure/quantities.js';

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
  readonly humidityPercent?: number;
  /** Since midnight. */
  readonly sunsetMinutes?: Minutes;
};

/** The day as it was told, and when. */
export type ToldDay = Weather & { readonly atMs: number };

export type ToldDays = { readonly [Work in DayWork]?: ToldDay };
