import type { Source } from '../measure/figure.js';
import type { Celsius, Minutes } from '../measure/quantities.js';
import { type GlueId, glueOf } from './glue.js';
import { glueTimes } from './glue-times.js';
import { sourced } from './sourced.js';
import { practice, seen } from './sources.js';

/** The day as it is in the garage, and the night after. */
export type GlueWeather = {
  /** Wood, glue and air at the joint, the coldest of them. */
  readonly now: Celsius;
  /** Coldest that the joint will see in the next 24 to 36 h. */
  readonly coldest: Celsius;
  /** Where the wood lay last night. */
  readonly slept: Celsius;
  /** How long it has been in the warm since. */
  readonly hoursWarm: number;
  readonly moisturePercent: number;
};

/** One reason why not, with the limit and what has to come true first. */
export type GlueObstacle =
  | {
      readonly kind: 'too-cold-now' | 'too-warm-now';
      readonly is: Celsius;
      readonly limit: Celsius;
    }
  | { readonly kind: 'too-cold-night'; readonly is: Celsius; readonly limit: Celsius }
  | { readonly kind: 'wood-chilled'; readonly is: Celsius; readonly hoursLeft: number }
  | { readonly kind: 'too-wet'; readonly is: number; readonly limit: number };

export type GlueDay =
  | {
      readonly verdict: 'today';
      readonly openMinutes: Minutes;
      readonly assemblyMinutes: Minutes;
      readonly clampMinutes: Minutes;
      readonly fullCureHours: number;
      /** So long wood and air stay above the lowest temperature of the glue. */
      readonly watchHours: number;
      readonly source: Source;
    }
  | {
      readonly verdict: 'not-today';
      readonly obstacles: readonly (GlueObstacle & { readonly source: Source })[];
      readonly watchHours: number;
    };

export const HOLD_WARM_HOURS = sourced(24, seen('glue-cold', 'hold the warmth for 24 h'));
export const HOLD_WARM_LONGER_HOURS = sourced(
  36,
  seen('glue-cold', 'nearer 36 h when only just above the minimum'),
);
/** What counts as only just above: 5 F. */
export const JUST_ABOVE: Celsius = 25 / 9;
export const WARM_THROUGH_HOURS = sourced(
  24,
  practice('wood brought in the day before; warmed through takes hours, not minutes'),
);

/**
 * May I glue today? Working times are those of the temperature now, waits those of the coldest hour to
 * come, since the night is what a slow joint cures in. Every reason against it is told.
 * @example glueDay('pva-type-1', { now: 20, coldest: 0, … }) // not today: too cold in the night
 */
export function glueDay(id: GlueId, weather: GlueWeather): GlueDay {
  const coldest = Math.min(weather.now, weather.coldest);
  const watchHours = hoursToWatch(id, coldest);
  const obstacles = obstaclesOf(id, weather);
  if (obstacles.length > 0) return { verdict: 'not-today', obstacles, watchHours };
  const working = glueTimes(id, weather.now);
  const waits = glueTimes(id, coldest);
  if (working.kind !== 'times' || waits.kind !== 'times')
    throw new Error(`no times of ${id} inside its own range`);
  return {
    verdict: 'today',
    openMinutes: working.openMinutes,
    assemblyMinutes: working.assemblyMinutes,
    clampMinutes: waits.clampMinutes,
    fullCureHours: waits.fullCureHours,
    watchHours,
    source: waits.source,
  };
}

function hoursToWatch(id: GlueId, coldest: Celsius): number {
  const spare = coldest - glueOf(id).lowest.value;
  return (spare < JUST_ABOVE ? HOLD_WARM_LONGER_HOURS : HOLD_WARM_HOURS).value;
}

function obstaclesOf(
  id: GlueId,
  { now, coldest, slept, hoursWarm, moisturePercent }: GlueWeather,
): readonly (GlueObstacle & { readonly source: Source })[] {
  const { lowest, highest, wettestWoodPercent } = glueOf(id);
  const found: (GlueObstacle & { readonly source: Source })[] = [];
  if (now < lowest.value)
    found.push({ kind: 'too-cold-now', is: now, limit: lowest.value, source: lowest.source });
  if (now > highest.value)
    found.push({ kind: 'too-warm-now', is: now, limit: highest.value, source: highest.source });
  if (coldest < lowest.value)
    found.push({ kind: 'too-cold-night', is: coldest, limit: lowest.value, source: lowest.source });
  const hoursLeft = WARM_THROUGH_HOURS.value - hoursWarm;
  if (slept < lowest.value && hoursLeft > 0)
    found.push({ kind: 'wood-chilled', is: slept, hoursLeft, source: WARM_THROUGH_HOURS.source });
  if (moisturePercent > wettestWoodPercent.value)
    found.push({
      kind: 'too-wet',
      is: moisturePercent,
      limit: wettestWoodPercent.value,
      source: wettestWoodPercent.source,
    });
  return found;
}
