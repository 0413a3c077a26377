import {
  CLAMP_FORCE,
  CLAMP_PRESSURE,
  CLAMP_SPACING,
  FIRST_CLAMP,
  PRESSURE_CEILING,
  SPREAD_RULE,
  WIDEST_CLAMP_SPACING,
} from './clamps.js';
import { MAGNUS, OLDER_MAGNUS } from './dew-point.js';
import { HOLD_WARM_HOURS, HOLD_WARM_LONGER_HOURS, WARM_THROUGH_HOURS } from './glue-day.js';
import { BEFORE_SUNSET_HOURS, DEW_GONE_MINUTES, SPRINKLE_MINUTES } from './seal-day.js';
import { MEAN_SUNSET, USUAL_LATITUDE } from './sunset.js';

/** Tables about clamping and about days for glue and sealer, by their heading on the sources page. */
export const WEATHER_TABLES: Readonly<Record<string, unknown>> = {
  clamps: [
    CLAMP_PRESSURE,
    PRESSURE_CEILING,
    CLAMP_FORCE,
    CLAMP_SPACING,
    FIRST_CLAMP,
    WIDEST_CLAMP_SPACING,
    SPREAD_RULE,
  ],
  'days for glue': [HOLD_WARM_HOURS, HOLD_WARM_LONGER_HOURS, WARM_THROUGH_HOURS],
  'dew point': [MAGNUS, OLDER_MAGNUS],
  'days for sealer': [BEFORE_SUNSET_HOURS, DEW_GONE_MINUTES, SPRINKLE_MINUTES],
  sunset: [USUAL_LATITUDE, MEAN_SUNSET],
};
