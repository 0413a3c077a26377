import {
  equilibriumMoisture,
  FAHRENHEIT_FORM,
  insideTable,
  TABLE_AIR,
} from '../../materials/moisture.js';
import { figure } from '../../measure/figure-text.js';
import { formatNumber } from '../../measure/format-number.js';
import { fahrenheit, formatTemperature } from '../../measure/temperature.js';
import type { Given, WorkResult, WorkRule } from './rule.js';

/** Colder than 0 °F the equation runs away from what wood does. */
const COLDEST = fahrenheit(0);
const WARMEST = 60;

/** `notchbook work moisture`: what wood comes to in air. */
export const MOISTURE_RULE: WorkRule = {
  name: 'moisture',
  say: 'moisture that wood comes to in air of some temperature and humidity',
  example: 'notchbook work moisture --temperature 70F --humidity 60',
  options: [
    {
      name: 'temperature',
      kind: 'temperature',
      say: 'temperature of the air',
      example: '70F',
      least: COLDEST,
      most: WARMEST,
    },
    {
      name: 'humidity',
      kind: 'number',
      say: 'relative humidity in percent',
      example: '60',
      least: 0,
      most: 100,
    },
  ],
  work,
};

function work(given: Given): WorkResult {
  const air = given.number('temperature');
  const humidity = given.number('humidity');
  const because = `wood long in air of ${formatTemperature(air, given.display)} and ${formatNumber(humidity, 1)}% humidity`;
  return {
    ok: true,
    figures: [
      {
        name: 'percent',
        say: 'moisture of the wood',
        figure: figure(
          equilibriumMoisture(air, humidity),
          'percent',
          because,
          FAHRENHEIT_FORM.source,
        ),
      },
    ],
    more: {},
    notes: [checkedWords(air, humidity), 'For wood out of rain and sun; a board takes weeks.'],
  };
}

function checkedWords(air: number, humidity: number): string {
  if (insideTable(air, humidity))
    return 'The equation was held against Wood Handbook Table 4-2: within 0.1%.';
  const { leastF, mostF, leastHumidity, mostHumidity } = TABLE_AIR;
  return `Outside Wood Handbook Table 4-2 (${leastF} to ${mostF} °F, ${leastHumidity} to ${mostHumidity}% humidity): not checked there.`;
}
