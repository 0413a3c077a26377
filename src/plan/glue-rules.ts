import type { Dryness } from '../materials/dryness.js';
import { type GlueId, glueOf } from '../materials/glue.js';
import {
  HOLD_WARM_HOURS,
  HOLD_WARM_LONGER_HOURS,
  JUST_ABOVE,
  WARM_THROUGH_HOURS,
} from '../materials/glue-day.js';
import { figure } from '../measure/figure-text.js';
import type { Celsius, Display } from '../measure/quantities.js';
import { formatTemperature } from '../measure/temperature.js';
import type { DayRule } from './day-rule.js';

/** When a glue may be used: all of it has to be so on the day, and in the night after. */
export function glueRules(
  id: GlueId,
  { dryness, display }: { readonly dryness: Dryness; readonly display: Display },
): readonly DayRule[] {
  const { lowest, highest, wettestWoodPercent } = glueOf(id);
  const say = (celsius: Celsius) => formatTemperature(celsius, display);
  const soon = lowest.value + JUST_ABOVE;
  const sold = dryness.moisturePercent.value;
  return [
    {
      name: 'Warmth',
      asks: 'now',
      text: `wood, glue and air at ${say(lowest.value)} or more, and not over ${say(highest.value)}`,
      limit: figure(lowest.value, 'C', 'colder, it dries white and stays weak', lowest.source),
    },
    {
      name: 'Tonight',
      asks: 'coldest',
      text: `not under ${say(lowest.value)} for ${HOLD_WARM_HOURS.value} h, or ${HOLD_WARM_LONGER_HOURS.value} h where it falls to ${say(soon)}`,
      limit: figure(
        HOLD_WARM_HOURS.value * 60,
        'min',
        'the night is what a slow joint cures in',
        HOLD_WARM_HOURS.source,
      ),
    },
    {
      name: 'Cold boards',
      asks: 'slept',
      text: `in the warm for ${WARM_THROUGH_HOURS.value} h first, where they lay under ${say(lowest.value)}`,
      limit: figure(
        WARM_THROUGH_HOURS.value * 60,
        'min',
        'wood warms through in hours, not in minutes',
        WARM_THROUGH_HOURS.source,
      ),
    },
    {
      name: 'Wood',
      asks: 'moisturePercent',
      text: `${wettestWoodPercent.value}% or drier by a meter; yours are sold at about ${sold}%`,
      limit: figure(
        wettestWoodPercent.value,
        'percent',
        'this glue sets by giving its water to the wood',
        wettestWoodPercent.source,
      ),
    },
  ];
}
