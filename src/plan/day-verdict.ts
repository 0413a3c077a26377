import { glueOf } from '../materials/glue.js';
import { type GlueDay, type GlueWeather, glueDay } from '../materials/glue-day.js';
import { glueVerdict, glueWhen } from '../materials/glue-words.js';
import { sealDay } from '../materials/seal-day.js';
import { formatSpread, sealVerdict, sealWhen } from '../materials/seal-words.js';
import type { Display, Minutes } from '../measure/quantities.js';
import { formatTemperature } from '../measure/temperature.js';
import { GLUE } from './glue-plan.js';
import { SEALER } from './sealer-plan.js';
import type { DayWork, ToldDay } from './told-day.js';

/** What the day is good for, in words; `go` where nothing that was told speaks against it. */
export type DayVerdict = {
  readonly kind: 'go' | 'look-first' | 'not-today' | 'not-told';
  readonly words: string;
  /** On what condition or from when, where not now. */
  readonly when: string;
  /** What was looked at, with the sums; and what was not. */
  readonly sums: readonly string[];
};

type Seen = { readonly display: Display; readonly clockMinutes: Minutes };

/** May it be glued, or sealed, on the day that was told? The label comes before all of it. */
export function dayVerdict(work: DayWork, told: ToldDay, seen: Seen): DayVerdict {
  return work === 'glue' ? glueVerdictOf(told, seen) : sealVerdictOf(told, seen);
}

/** The weather of a told day as far as glue goes; nothing where nobody knows how warm it is. */
export function glueDayOf(told: ToldDay): GlueDay | undefined {
  const weather = glueWeather(told);
  return weather && glueDay(GLUE, weather);
}

/** Drier than any limit: what was not measured is no obstacle, and is told apart. */
const NOT_MEASURED = 0;

function glueWeather(told: ToldDay): GlueWeather | undefined {
  const { now, moisturePercent = NOT_MEASURED } = told;
  if (now === undefined) return undefined;
  // What was not told is no obstacle of its own.
  const warmEnough = Math.max(now, glueOf(GLUE).lowest.value);
  const { coldest = warmEnough, slept = warmEnough } = told;
  return { now, coldest, slept, hoursWarm: 0, moisturePercent };
}

function glueVerdictOf(told: ToldDay, { display }: Seen): DayVerdict {
  const day = glueDayOf(told);
  if (day === undefined || told.now === undefined)
    return {
      kind: 'not-told',
      words: 'Nobody said how warm it is: waits are those of a warm day.',
      when: '',
      sums: [],
    };
  return {
    kind: day.verdict === 'today' ? 'go' : 'not-today',
    words: glueVerdict(day, display),
    when: glueWhen(day, display),
    sums: [
      `${formatTemperature(told.now, display)} at the joint, ${formatTemperature(Math.min(told.now, told.coldest ?? told.now), display)} at the coldest.`,
      ...(told.moisturePercent === undefined ? [notMetered()] : []),
    ],
  };
}

/** A yes to the warmth alone is not to be taken for a yes to boards that come wet from the store. */
function notMetered(): string {
  const { wettestWoodPercent } = glueOf(GLUE);
  return `Not checked: how wet the wood is. This glue wants ${wettestWoodPercent.value}% or drier.`;
}

function sealVerdictOf(told: ToldDay, { display, clockMinutes }: Seen): DayVerdict {
  const { now, coldest = now, humidityPercent, sunsetMinutes, moisturePercent } = told;
  if (now === undefined || coldest === undefined || humidityPercent === undefined)
    return {
      kind: 'not-told',
      words: 'Warmth or humidity was not told: go by the rules of this step and the label.',
      when: '',
      sums: [],
    };
  const day = sealDay(SEALER, {
    air: now,
    surface: now,
    humidityPercent,
    low: coldest,
    ...(moisturePercent !== undefined && { moisturePercent }),
    sprinkle: 'not-tried',
    nowMinutes: clockMinutes,
    ...(sunsetMinutes !== undefined && { sunsetMinutes }),
  });
  const dew = `Dew point ${formatTemperature(day.dewPoint, display)}: the wood is ${formatSpread(day.spread, display)} above it, ${formatSpread(3, display)} is wanted.`;
  const hours =
    sunsetMinutes === undefined ? ['Not checked: hours to sunset, as for work under a roof.'] : [];
  return {
    kind: SEAL_KINDS[day.verdict],
    words: sealVerdict(day, display),
    when: sealWhen(day, display),
    sums: [dew, ...hours],
  };
}

const SEAL_KINDS = {
  yes: 'go',
  'test-first': 'look-first',
  'later-today': 'not-today',
  'not-today': 'not-today',
} as const;
