import type { Source } from '../measure/figure.js';
import type { Celsius } from '../measure/quantities.js';
import { seen } from './sources.js';

/** Constants of the Magnus formula; `c` in °C. */
export type MagnusForm = { readonly b: number; readonly c: Celsius; readonly source: Source };

export const MAGNUS: MagnusForm = {
  b: 17.625,
  c: 243.04,
  source: seen('magnus', 'fitted from -40 to 50 °C'),
};

export const OLDER_MAGNUS: MagnusForm = {
  b: 17.27,
  c: 237.7,
  source: seen('magnus-older', 'worked example, 22 °C and 78 %'),
};

/** Drier air than this is no weather, and no air is drier than none. */
const DRIEST_PERCENT = 1;

/**
 * The temperature at which this air begins to leave dew. Humidity in percent, 1 to 100; what lies
 * outside is taken as the nearest of them.
 * @example dewPoint(20, 65) // 13.2 °C
 */
export function dewPoint(
  air: Celsius,
  humidityPercent: number,
  { b, c }: MagnusForm = MAGNUS,
): Celsius {
  const share = Math.min(100, Math.max(DRIEST_PERCENT, humidityPercent)) / 100;
  const g = Math.log(share) + (b * air) / (c + air);
  return (c * g) / (b - g);
}

/**
 * The humidity in percent of air whose dew point is known, for forecasts that give that instead.
 * @example humidityAt(fahrenheit(54), fahrenheit(49)) // 83 %
 */
export function humidityAt(air: Celsius, dew: Celsius, { b, c }: MagnusForm = MAGNUS): number {
  return 100 * Math.exp((b * dew) / (c + dew) - (b * air) / (c + air));
}
