import { formatDay } from '../measure/calendar.js';
import { formatClock } from '../measure/clock.js';
import { count } from '../text/plural.js';
import type { Forecast } from './forecast.js';

/** From so much on the pace is told; below it nobody would notice. */
const WORTH_TELLING = 0.1;

/** "by Wed Dec 9, about 20:40: 2 more sessions, in 1.3 x the time". */
export function forecastWords({ day, clock, sessions, pace }: Forecast): string {
  const done = `by ${formatDay(day)}, about ${formatClock(clock)}: ${count(sessions.length, 'more session')}`;
  const asPlanned = pace.learnedFrom === 0 || Math.abs(pace.all - 1) < WORTH_TELLING;
  if (asPlanned) return `${done}, as planned`;
  return `${done}, in ${pace.all.toFixed(1)} x the time`;
}
