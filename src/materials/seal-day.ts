import type { Source } from '../measure/figure.js';
import type { Celsius, Minutes } from '../measure/quantities.js';
import { dewPoint } from './dew-point.js';
import {
  ABOVE_DEW_POINT,
  DAMPEST_AIR_PERCENT,
  type Sealer,
  type SealerId,
  sealerOf,
  WETTEST_TO_SEAL,
} from './sealer.js';
import { sourced } from './sourced.js';
import { practice, seen } from './sources.js';

/** Water sprinkled on the wood: it soaks in within about ten minutes, or it stands in beads. */
export type Sprinkle = 'soaks-in' | 'beads' | 'not-tried';

export type SealWeather = {
  readonly air: Celsius;
  /** Of the wood where it is coated, in the shade or in the sun. */
  readonly surface: Celsius;
  readonly humidityPercent: number;
  /** Coldest until the coat has dried. */
  readonly low: Celsius;
  /** Measured with a meter; left out where there is none. */
  readonly moisturePercent?: number;
  readonly sprinkle: Sprinkle;
  /** Since midnight. */
  readonly nowMinutes: Minutes;
  /** Left out under a roof, or where nobody knows: the hours of the day are not looked at then. */
  readonly sunsetMinutes?: Minutes;
};

export type SealObstacle =
  | { readonly kind: 'wet-wood'; readonly is: number; readonly limit: number }
  | { readonly kind: 'beads' | 'unknown-wood' }
  | {
      readonly kind: 'too-cold' | 'too-warm' | 'cold-night';
      readonly is: Celsius;
      readonly limit: Celsius;
    }
  | { readonly kind: 'damp-air'; readonly is: number; readonly limit: number }
  | { readonly kind: 'near-dew-point'; readonly is: Celsius; readonly limit: Celsius }
  | { readonly kind: 'too-late' | 'too-early' | 'short-day'; readonly limit: Minutes };

export type SealDay = {
  /** `test-first`: nothing against it but that nobody knows how wet the wood is. */
  readonly verdict: 'yes' | 'test-first' | 'later-today' | 'not-today';
  /** Last brush stroke, since midnight; undefined where no sunset was told. */
  readonly untilMinutes: Minutes | undefined;
  /** First brush stroke, today or on the next day that has no obstacle, since midnight. */
  readonly fromMinutes: Minutes;
  readonly dewPoint: Celsius;
  /** How much warmer the surface is than the dew point. */
  readonly spread: Celsius;
  /** Dew may form on it in the night. */
  readonly dewTonight: boolean;
  readonly obstacles: readonly (SealObstacle & { readonly source: Source })[];
};

export const BEFORE_SUNSET_HOURS = sourced(
  4,
  practice('last stroke 4 h before sunset, so that the coat has set before dew'),
);
export const DEW_GONE_MINUTES = sourced<Minutes>(
  10 * 60,
  practice('morning dew is usually gone by 10:00; feel the wood'),
);
export const SPRINKLE_MINUTES = sourced<Minutes>(
  10,
  seen('deck-sprinkle', 'drops soaked in within about 10 min: dry enough'),
);

/**
 * May I seal now? Wood, air, dew point, the night to come and the sun are each looked at; every reason
 * against it is told. The label comes before all of it.
 * @example sealDay('penetrating-sealer', …) // 54 °F with a dew point of 49 °F at 20:00: not today
 */
export function sealDay(id: SealerId, weather: SealWeather): SealDay {
  const dew = dewPoint(weather.air, weather.humidityPercent);
  const spread = weather.surface - dew;
  const { sunsetMinutes } = weather;
  const untilMinutes =
    sunsetMinutes === undefined ? undefined : sunsetMinutes - BEFORE_SUNSET_HOURS.value * 60;
  const obstacles = [
    ...woodObstacles(weather),
    ...airObstacles(sealerOf(id), weather, spread),
    ...hourObstacles(weather.nowMinutes, untilMinutes),
  ];
  return {
    verdict: verdictOf(obstacles.map(({ kind }) => kind)),
    untilMinutes,
    fromMinutes: DEW_GONE_MINUTES.value,
    dewPoint: dew,
    spread,
    dewTonight: weather.low < dew + ABOVE_DEW_POINT.value,
    obstacles,
  };
}

function verdictOf(kinds: readonly SealObstacle['kind'][]): SealDay['verdict'] {
  if (kinds.length === 0) return 'yes';
  if (kinds.some(kind => kind !== 'too-early' && kind !== 'unknown-wood')) return 'not-today';
  return kinds.includes('unknown-wood') ? 'test-first' : 'later-today';
}

type Found = SealDay['obstacles'];

function woodObstacles({ moisturePercent, sprinkle }: SealWeather): Found {
  const { value: limit, source } = WETTEST_TO_SEAL;
  const found: Found[number][] = [];
  if (moisturePercent !== undefined && moisturePercent >= limit)
    found.push({ kind: 'wet-wood', is: moisturePercent, limit, source });
  if (sprinkle === 'beads') found.push({ kind: 'beads', source: SPRINKLE_MINUTES.source });
  if (moisturePercent === undefined && sprinkle === 'not-tried')
    found.push({ kind: 'unknown-wood', source: SPRINKLE_MINUTES.source });
  return found;
}

function airObstacles(
  { lowest, highest }: Sealer,
  { air, surface, low, humidityPercent }: SealWeather,
  spread: Celsius,
): Found {
  const found: Found[number][] = [];
  const coldest = Math.min(air, surface);
  const warmest = Math.max(air, surface);
  if (coldest < lowest.value)
    found.push({ kind: 'too-cold', is: coldest, limit: lowest.value, source: lowest.source });
  if (warmest > highest.value)
    found.push({ kind: 'too-warm', is: warmest, limit: highest.value, source: highest.source });
  if (low < lowest.value)
    found.push({ kind: 'cold-night', is: low, limit: lowest.value, source: lowest.source });
  const damp = DAMPEST_AIR_PERCENT;
  if (humidityPercent >= damp.value)
    found.push({ kind: 'damp-air', is: humidityPercent, limit: damp.value, source: damp.source });
  const above = ABOVE_DEW_POINT;
  if (spread < above.value)
    found.push({ kind: 'near-dew-point', is: spread, limit: above.value, source: above.source });
  return found;
}

function hourObstacles(now: Minutes, until: Minutes | undefined): Found {
  if (until === undefined) return [];
  const { value: from, source } = DEW_GONE_MINUTES;
  if (until <= from)
    return [{ kind: 'short-day', limit: until, source: BEFORE_SUNSET_HOURS.source }];
  if (now >= until) return [{ kind: 'too-late', limit: until, source: BEFORE_SUNSET_HOURS.source }];
  return now < from ? [{ kind: 'too-early', limit: from, source }] : [];
}
