import type { Source } from '../measure/figure.js';
import type { Celsius, Minutes } from '../measure/quantities.js';
import { fahrenheit } from '../measure/temperature.js';
import { type Glue, type GlueId, glueOf } from './glue.js';
import { practice, workedOut } from './sources.js';

export type GlueTimes =
  | {
      readonly kind: 'times';
      readonly openMinutes: Minutes;
      readonly assemblyMinutes: Minutes;
      readonly clampMinutes: Minutes;
      readonly fullCureHours: number;
      readonly source: Source;
    }
  | { readonly kind: 'too-cold'; readonly lowest: Celsius; readonly because: string }
  | { readonly kind: 'too-warm'; readonly highest: Celsius; readonly because: string };

const DOUBLES_EVERY: Celsius = 10;

/** Longest open and closed minutes of resorcinol by temperature (bulletin, Table 3). */
const RESORCINOL_OPEN: readonly (readonly [Celsius, Minutes])[] = [
  [fahrenheit(70), 10],
  [fahrenheit(80), 5],
  [fahrenheit(90), 1],
];
const RESORCINOL_CLOSED: readonly (readonly [Celsius, Minutes])[] = [
  [fahrenheit(70), 60],
  [fahrenheit(80), 45],
  [fahrenheit(90), 30],
];

const RULE = practice('times double for every 10 C colder, inside the range of the label');

/**
 * Working and waiting times of a glue at a temperature, or that it is too cold or too warm for it.
 * Waits double for every 10 C colder and are rounded up; working times halve for every 10 C warmer
 * and are rounded down. Cold is not counted on to give more working time. Humidity and wet wood move
 * all of them too. The temperature to give is the coldest that the wood will see until it has cured.
 * @example glueTimes('pva-type-1', 10) // clamp 120 min, full load after 48 h
 */
export function glueTimes(id: GlueId, celsius: Celsius): GlueTimes {
  const glue = glueOf(id);
  if (celsius < glue.lowest.value) return tooCold(glue);
  if (celsius > glue.highest.value) return tooWarm(glue);
  const slower = 2 ** ((glue.timesAt - celsius) / DOUBLES_EVERY);
  const working = workingTimes(glue, celsius, Math.min(1, slower));
  return {
    kind: 'times',
    ...working,
    clampMinutes: roundUp(glue.clampMinutes.value * slower, 5),
    fullCureHours: roundUp(glue.fullCureHours.value * slower, 1),
    source:
      id === 'resorcinol'
        ? workedOut('resorcinol-bulletin', 'Table 3; waits by doubling per 10 C')
        : RULE,
  };
}

function workingTimes(
  glue: Glue,
  celsius: Celsius,
  factor: number,
): { openMinutes: Minutes; assemblyMinutes: Minutes } {
  if (glue.id === 'resorcinol') {
    return {
      openMinutes: Math.floor(between(RESORCINOL_OPEN, celsius)),
      assemblyMinutes: Math.floor(between(RESORCINOL_CLOSED, celsius)),
    };
  }
  return {
    openMinutes: Math.floor(glue.openMinutes.value * factor),
    assemblyMinutes: Math.floor(glue.assemblyMinutes.value * factor),
  };
}

/** Straight line between the rows of a table, held level outside it. */
function between(rows: readonly (readonly [Celsius, Minutes])[], celsius: Celsius): Minutes {
  const after = rows.findIndex(([at]) => at >= celsius);
  const upper = rows[after];
  const lower = rows[after - 1];
  if (upper === undefined) return rows.at(-1)?.[1] ?? 0;
  if (lower === undefined) return upper[1];
  const share = (celsius - lower[0]) / (upper[0] - lower[0]);
  return lower[1] + share * (upper[1] - lower[1]);
}

function roundUp(value: number, step: number): number {
  return Math.ceil(value / step - 1e-9) * step;
}

function tooCold({ name, lowest }: Glue): GlueTimes {
  return {
    kind: 'too-cold',
    lowest: lowest.value,
    because: `${name} does not set soundly this cold: glue indoors, warm the wood through for a day, or wait`,
  };
}

function tooWarm({ name, highest }: Glue): GlueTimes {
  return {
    kind: 'too-warm',
    highest: highest.value,
    because: `${name} grabs too fast in this heat: work in the shade or in the morning, or wait`,
  };
}
