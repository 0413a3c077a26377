import { humidityAt } from '../materials/dew-point.js';
import { BEFORE_SUNSET_HOURS, DEW_GONE_MINUTES, SPRINKLE_MINUTES } from '../materials/seal-day.js';
import { formatSpread } from '../materials/seal-words.js';
import { ABOVE_DEW_POINT, type SealerId, sealerOf, WETTEST_TO_SEAL } from '../materials/sealer.js';
import { formatClock } from '../measure/clock.js';
import { figure } from '../measure/figure-text.js';
import type { Celsius, Display } from '../measure/quantities.js';
import { formatTemperature } from '../measure/temperature.js';
import type { DayRule } from './day-rule.js';

/** A mild day, for which the dew point is told as a humidity. */
const MILD: Celsius = 20;

/** When a sealer may be put on: all of it has to be so until the coat is dry. */
export function sealRules(id: SealerId, display: Display): readonly DayRule[] {
  return [...woodRules(), ...airRules(id, display), ...hourRules(id)];
}

function woodRules(): readonly DayRule[] {
  const { value, source } = WETTEST_TO_SEAL;
  return [
    {
      name: 'Wood',
      text: `sprinkled water soaks in within ${SPRINKLE_MINUTES.value} min, or a meter shows under ${value}%`,
      limit: figure(value, 'percent', 'wetter wood takes no finish up', source),
    },
  ];
}

function airRules(id: SealerId, display: Display): readonly DayRule[] {
  const { lowest, highest } = sealerOf(id);
  const say = (celsius: Celsius) => formatTemperature(celsius, display);
  const spread = ABOVE_DEW_POINT.value;
  const humid = Math.floor(humidityAt(MILD, MILD - spread));
  return [
    {
      name: 'Air and wood',
      text: `${say(lowest.value)} or more, the night too, and not over ${say(highest.value)}`,
      limit: figure(lowest.value, 'C', 'until the coat is dry', lowest.source),
    },
    {
      name: 'Dew',
      text: `the wood ${formatSpread(spread, display)} or more above the dew point; at ${say(MILD)} that is humidity up to ${humid}%`,
      limit: figure(
        humid,
        'percent',
        `humidity at which the dew point is that far below ${say(MILD)}`,
        ABOVE_DEW_POINT.source,
      ),
    },
  ];
}

function hourRules(id: SealerId): readonly DayRule[] {
  const { rainHours } = sealerOf(id);
  return [
    {
      name: 'Hours',
      text: `from about ${formatClock(DEW_GONE_MINUTES.value)}, when the dew has gone; last stroke ${BEFORE_SUNSET_HOURS.value} h before sunset`,
      limit: figure(
        BEFORE_SUNSET_HOURS.value * 60,
        'min',
        'so that it has set before the evening dew',
        BEFORE_SUNSET_HOURS.source,
      ),
    },
    {
      name: 'Rain',
      text: `none for ${rainHours.value} h after the last stroke, by the forecast`,
      limit: figure(rainHours.value * 60, 'min', 'before rain may fall on it', rainHours.source),
    },
  ];
}
