import type { Source } from '../measure/figure.js';
import type { Celsius } from '../measure/quantities.js';
import { toFahrenheit } from '../measure/temperature.js';
import { recalled, seen } from './sources.js';

/** Constants a + b t + c t² of the sorption equation, with t in the degrees of its form. */
type Quadratic = readonly [number, number, number];

/** One printed form of the Hailwood-Horrobin equation. */
export type SorptionForm = {
  readonly degrees: 'F' | 'C';
  readonly w: Quadratic;
  readonly k: Quadratic;
  readonly k1: Quadratic;
  readonly k2: Quadratic;
  readonly source: Source;
};

export const FAHRENHEIT_FORM: SorptionForm = {
  degrees: 'F',
  w: [330, 0.452, 0.00415],
  k: [0.791, 4.63e-4, -8.44e-7],
  k1: [6.34, 7.75e-4, -9.35e-5],
  k2: [1.09, 2.84e-2, -9.04e-5],
  source: seen('simpson-1973', 'Hailwood-Horrobin equation, degrees F'),
};

export const CELSIUS_FORM: SorptionForm = {
  degrees: 'C',
  w: [349, 1.29, 0.0135],
  k: [0.805, 7.36e-4, -2.73e-6],
  k1: [6.27, -9.38e-3, -3.03e-4],
  k2: [1.91, 4.07e-2, -2.93e-4],
  source: recalled('wood-handbook', 'equation 4-5, degrees C'),
};

/** Air that Wood Handbook Table 4-2 covers; outside it the equation has not been held against a table. */
export const TABLE_AIR = { leastF: 30, mostF: 200, leastHumidity: 5, mostHumidity: 95 } as const;

/**
 * The moisture percent that wood comes to when it stays long in such air, out of rain: equilibrium
 * moisture content. Humidity in percent, 0 to 100. Checked within 0.1 against Wood Handbook Table 4-2.
 * @example equilibriumMoisture(fahrenheit(70), 60) // 11 %
 */
export function equilibriumMoisture(
  air: Celsius,
  humidityPercent: number,
  form: SorptionForm = FAHRENHEIT_FORM,
): number {
  const degrees = form.degrees === 'F' ? toFahrenheit(air) : air;
  const at = ([a, b, c]: Quadratic) => a + b * degrees + c * degrees ** 2;
  const kh = (at(form.k) * humidityPercent) / 100;
  const k1kh = at(form.k1) * kh;
  const k1k2kh = k1kh * at(form.k2) * kh;
  return (1800 / at(form.w)) * (kh / (1 - kh) + (k1kh + 2 * k1k2kh) / (1 + k1kh + k1k2kh));
}

/** True where Wood Handbook Table 4-2 has rows and columns for this air. */
export function insideTable(air: Celsius, humidityPercent: number): boolean {
  const degrees = toFahrenheit(air);
  const { leastF, mostF, leastHumidity, mostHumidity } = TABLE_AIR;
  return (
    degrees >= leastF &&
    degrees <= mostF &&
    humidityPercent >= leastHumidity &&
    humidityPercent <= mostHumidity
  );
}
