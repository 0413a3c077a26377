import type { Source } from '../measure/figure.js';
import type { Celsius } from '../measure/quantities.js';
import { equilibriumMoisture } from './moisture.js';

/** Mean temperature and relative humidity in percent of one month. */
export type AirOfMonth = readonly [air: Celsius, humidityPercent: number];

/** A place with the moisture that wood comes to there, outdoors but out of rain and sun. */
export type Climate = {
  readonly name: string;
  readonly alsoCalled: readonly string[];
  readonly year:
    | { readonly kind: 'months'; readonly percents: readonly number[] }
    | { readonly kind: 'ends'; readonly driest: number; readonly wettest: number };
  readonly source: Source;
};

/** What the percents of twelve months of air come to, to a tenth like the printed tables. */
export function monthsOfAir(air: readonly AirOfMonth[]): readonly number[] {
  return air.map(
    ([celsius, humidity]) => Math.round(equilibriumMoisture(celsius, humidity) * 10) / 10,
  );
}
