import { glueOf } from '../materials/glue.js';
import {
  type GlueDay,
  type GlueWeather,
  glueDay,
  WARM_THROUGH_HOURS,
} from '../materials/glue-day.js';
import { glueVerdict, glueWhen } from '../materials/glue-words.js';
import type { Celsius, Display, Minutes } from '../measure/quantities.js';
import { formatTemperature } from '../measure/temperature.js';
import { GLUE } from './glue-plan.js';
import { sealVerdictOf } from './seal-verdict.js';
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

/** When and for whom it is told. */
export type Seen = { readonly display: Display; readonly clockMinutes: Minutes };

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
  const open = day.verdict === 'today' && told.coldest === undefined;
  const least = formatTemperature(glueOf(GLUE).lowest.value, display);
  return {
    kind: day.verdict !== 'today' ? 'not-today' : open ? 'look-first' : 'go',
    words: open
      ? `Not decided: the coldest until tomorrow evening was not told. Yes, if wood and air stay at ${least} or more for ${day.watchHours} h.`
      : glueVerdict(day, display),
    when: glueWhen(day, display),
    sums: [
      warmthWords({ ...told, now: told.now }, display),
      ...(told.slept === undefined && day.verdict === 'today' ? [notSlept(display)] : []),
      ...(told.moisturePercent === undefined ? [notMetered()] : []),
    ],
  };
}

function warmthWords({ now, coldest }: ToldDay & { readonly now: Celsius }, display: Display) {
  const say = (celsius: Celsius) => formatTemperature(celsius, display);
  if (coldest === undefined) return `${say(now)} at the joint now.`;
  return `${say(now)} at the joint, ${say(Math.min(now, coldest))} at the coldest.`;
}

/** A warm afternoon says nothing of boards that lay in the cold: field practice, wood at the joint matters most. */
function notSlept(display: Display): string {
  const least = formatTemperature(glueOf(GLUE).lowest.value, display);
  return `Not checked: where the wood lay last night. Boards that lay under ${least} want ${WARM_THROUGH_HOURS.value} h in the warm first.`;
}

/** A yes to the warmth alone is not to be taken for a yes to boards that come wet from the store. */
function notMetered(): string {
  const { wettestWoodPercent } = glueOf(GLUE);
  return `Not checked: how wet the wood is. This glue wants ${wettestWoodPercent.value}% or drier.`;
}
