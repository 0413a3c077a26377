import { humidityAt } from '../../materials/dew-point.js';
import type { SealWeather, Sprinkle } from '../../materials/seal-day.js';
import { SEALERS, type Sealer, type SealerId, sealerOf } from '../../materials/sealer.js';
import { parseClock } from '../../measure/clock.js';
import { type Parsed, parsed, unreadable } from '../../measure/parsed.js';
import { temperatureOption, usualTemperature } from './length-option.js';
import type { Given, WorkOption } from './rule.js';

const SPRINKLED: readonly Sprinkle[] = ['soaks-in', 'beads', 'not-tried'];

/** Which kind of sealer. */
export const SEALER_OPTION: WorkOption = {
  name: 'kind',
  kind: 'word',
  say: SEALERS.map(({ id }) => id).join(', '),
  example: 'penetrating-oil',
  usual: 'penetrating-sealer',
  choices: SEALERS.map(({ id }) => id),
};

export const SEAL_OPTIONS: readonly WorkOption[] = [
  temperatureOption('temperature', 'temperature of the air', '70F'),
  {
    name: 'humidity',
    kind: 'number',
    say: 'relative humidity in percent; or give --dew',
    example: '55',
    usual: '',
    least: 1,
    most: 100,
  },
  usualTemperature('dew', 'dew point of the forecast, in place of the humidity', '50F'),
  temperatureOption('low', 'coldest until tomorrow', '55F'),
  { name: 'now', kind: 'word', say: 'time of day', example: '11:00' },
  { name: 'sunset', kind: 'word', say: 'when the sun sets', example: '19:40' },
  usualTemperature('surface', 'temperature of the wood; else that of the air', '66F'),
  {
    name: 'moisture',
    kind: 'number',
    say: 'what a meter shows in the wood, in percent',
    example: '14',
    usual: '',
    least: 4,
    most: 200,
  },
  {
    name: 'sprinkle',
    kind: 'word',
    say: 'water drops on the wood: soaks-in (within 10 min), beads, not-tried',
    example: 'soaks-in',
    usual: 'not-tried',
    choices: SPRINKLED,
  },
  SEALER_OPTION,
];

/** The sealer that was asked for. */
export function sealerGiven(given: Given): Sealer {
  return sealerOf(given.word('kind') as SealerId);
}

/** The weather as given, or what is missing or cannot be. */
export function sealWeather(given: Given): Parsed<SealWeather> {
  const now = clockOf(given, 'now');
  if (!now.ok) return now;
  const sunset = clockOf(given, 'sunset');
  if (!sunset.ok) return sunset;
  const humidity = humidityOf(given);
  if (!humidity.ok) return humidity;
  const air = given.number('temperature');
  const sprinkle = SPRINKLED.find(word => word === given.word('sprinkle')) ?? 'not-tried';
  return parsed({
    air,
    surface: given.has('surface') ? given.number('surface') : air,
    humidityPercent: humidity.value,
    low: given.number('low'),
    ...(given.has('moisture') ? { moisturePercent: given.number('moisture') } : {}),
    sprinkle,
    nowMinutes: now.value,
    sunsetMinutes: sunset.value,
  });
}

function clockOf(given: Given, name: string): Parsed<number> {
  const read = parseClock(given.word(name));
  return read.ok ? read : unreadable(`--${name}: ${read.problem}`, read.hint);
}

function humidityOf(given: Given): Parsed<number> {
  const air = given.number('temperature');
  if (given.has('humidity') && given.has('dew'))
    return unreadable('--humidity and --dew say the same thing.', 'Give one of them.');
  if (given.has('humidity')) return parsed(given.number('humidity'));
  if (!given.has('dew'))
    return unreadable('How damp the air is has to be given.', 'For example --humidity 55.');
  const dew = given.number('dew');
  return dew <= air
    ? parsed(humidityAt(air, dew))
    : unreadable('--dew: air is never colder than its dew point.', 'Look the two up again.');
}
