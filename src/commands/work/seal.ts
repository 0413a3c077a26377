import { MAGNUS } from '../../materials/dew-point.js';
import {
  BEFORE_SUNSET_HOURS,
  type SealDay,
  type SealWeather,
  sealDay,
} from '../../materials/seal-day.js';
import { formatSpread, sealVerdict, sealWhen } from '../../materials/seal-words.js';
import { ABOVE_DEW_POINT, type Sealer, WETTEST_TO_SEAL } from '../../materials/sealer.js';
import { ragsCaution, sealerCaution } from '../../materials/sealer-care.js';
import { formatClock } from '../../measure/clock.js';
import { figure } from '../../measure/figure-text.js';
import { formatNumber } from '../../measure/format-number.js';
import { formatTemperature } from '../../measure/temperature.js';
import type { Answered, Given, WorkResult, WorkRule } from './rule.js';
import { SEAL_OPTIONS, sealerGiven, sealWeather } from './seal-options.js';

/** `notchbook work seal`: may I seal now. */
export const SEAL_RULE: WorkRule = {
  name: 'seal',
  say: 'may I seal now, and until when: wood, dew point, night and sunset',
  example:
    'notchbook work seal --temperature 70F --humidity 55 --low 55F --now 11:00 --sunset 19:40 --sprinkle soaks-in',
  options: SEAL_OPTIONS,
  work,
};

function work(given: Given): WorkResult {
  const weather = sealWeather(given);
  if (!weather.ok) return { ok: false, problems: [`${weather.problem} ${weather.hint}`] };
  const { display } = given;
  const sealer = sealerGiven(given);
  const day = sealDay(sealer.id, weather.value);
  const when = sealWhen(day, display);
  return {
    ok: true,
    verdict: sealVerdict(day, display),
    figures: [
      ...airFigures(day, weather.value, given),
      ...limitFigures(sealer),
      ...waitFigures(sealer),
    ],
    more: {
      verdict: day.verdict,
      ...(day.untilMinutes !== undefined && { until: formatClock(day.untilMinutes) }),
      from: formatClock(day.fromMinutes),
      spread_c: day.spread,
      dew_tonight: day.dewTonight,
      obstacles: day.obstacles,
    },
    notes: [
      ...(when === '' ? [] : [when]),
      `The wood is ${formatSpread(day.spread, display)} above the dew point; ${formatSpread(ABOVE_DEW_POINT.value, display)} is wanted until the coat is dry.`,
      `Last stroke ${BEFORE_SUNSET_HOURS.value} h before sunset.`,
      ...(day.dewTonight ? ['Dew may form tonight: the coat has to be dry by then.'] : []),
      ...sealer.notes,
      ...[sealerCaution(sealer.id), ragsCaution(sealer.id)].flatMap(({ title, lines }) => [
        title,
        ...lines,
      ]),
      'The label of the can comes before all of this. Not checked: rain, wind, and the wood under the surface.',
    ],
  };
}

function airFigures(day: SealDay, weather: SealWeather, given: Given): readonly Answered[] {
  const air = formatTemperature(weather.air, given.display);
  return [
    {
      name: 'dew_point',
      say: 'dew point',
      figure: figure(
        day.dewPoint,
        'C',
        `air of ${air} at ${formatNumber(weather.humidityPercent, 0)}% humidity`,
        MAGNUS.source,
      ),
    },
  ];
}

function limitFigures({ lowest, highest }: Sealer): readonly Answered[] {
  return [
    {
      name: 'lowest',
      say: 'no colder than',
      figure: figure(lowest.value, 'C', 'air and wood, until the coat is dry', lowest.source),
    },
    {
      name: 'highest',
      say: 'no warmer than',
      figure: figure(
        highest.value,
        'C',
        'air and wood; sun heats wood above the air',
        highest.source,
      ),
    },
    {
      name: 'wettest_percent',
      say: 'wood drier than',
      figure: figure(
        WETTEST_TO_SEAL.value,
        'percent',
        'by a meter; without one, water soaks in within 10 min',
        WETTEST_TO_SEAL.source,
      ),
    },
  ];
}

function waitFigures({ dwellMinutes, recoatHours, rainHours }: Sealer): readonly Answered[] {
  return [
    {
      name: 'dwell',
      say: 'wipe off after',
      figure: figure(
        dwellMinutes.value,
        'min',
        'what has not soaked in by then',
        dwellMinutes.source,
      ),
    },
    {
      name: 'recoat',
      say: 'next coat after',
      figure: figure(
        recoatHours.value * 60,
        'min',
        'longer when it is cool or damp',
        recoatHours.source,
      ),
    },
    {
      name: 'rain',
      say: 'no rain or dew for',
      figure: figure(rainHours.value * 60, 'min', 'after the last coat', rainHours.source),
    },
  ];
}
