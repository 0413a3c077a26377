import { BEFORE_SUNSET_HOURS, DEW_GONE_MINUTES } from '../materials/seal-day.js';
import { MEAN_SUNSET, sunsetOn } from '../materials/sunset.js';
import { type CalendarDay, dayNumber, formatDay } from '../measure/calendar.js';
import { formatClock } from '../measure/clock.js';
import type { Minutes } from '../measure/quantities.js';
import type { SessionDay } from './session-days.js';

type Hours = { readonly from: Minutes; readonly to: Minutes };

/** From when the dew has gone until some hours before sunset, in minutes since midnight; by the mean of the year where no date is known. */
function sealDaylight(date: CalendarDay | undefined): Hours {
  const sunset = date === undefined ? MEAN_SUNSET.value : sunsetOfDay(date);
  return { from: DEW_GONE_MINUTES.value, to: sunset - BEFORE_SUNSET_HOURS.value * 60 };
}

/** The hours of a session in which sealer may be put on outdoors; none where there are none. */
export function sealHours({ date, from, to }: SessionDay): Hours | undefined {
  const light = sealDaylight(date);
  const hours = { from: Math.max(from, light.from), to: Math.min(to, light.to) };
  return hours.to > hours.from ? hours : undefined;
}

/** "10:00 to 12:20 (4 h before sunset, on Fri Dec 4 about 16:20 at 45 degrees north)". */
export function sealHoursWords(date: CalendarDay | undefined): string {
  const { from, to } = sealDaylight(date);
  const hours = BEFORE_SUNSET_HOURS.value;
  const sunset = formatClock(to + hours * 60);
  const day =
    date === undefined
      ? `taken at ${sunset}, the mean of a year`
      : `on ${formatDay(date)} about ${sunset} by the sun at 45 degrees north`;
  return `${formatClock(from)} to ${formatClock(to)} (dew gone; ${hours} h before sunset, ${day})`;
}

/** Sunset by the sun at the usual latitude of the north, in minutes since midnight. */
export function sunsetOfDay(date: CalendarDay): Minutes {
  return sunsetOn(dayOfYear(date));
}

function dayOfYear(date: CalendarDay): number {
  return dayNumber(date) - dayNumber(`${date.slice(0, 4)}-01-01`) + 1;
}
