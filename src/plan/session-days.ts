import {
  type CalendarDay,
  dayNumber,
  dayOfNumber,
  WEEKDAYS,
  type Weekday,
  weekdayOfNumber,
} from '../measure/calendar.js';
import type { Minutes } from '../measure/quantities.js';
import type { SessionHabit } from './setting.js';

/** Hours on one day that somebody has: minutes since midnight, and how many days after the first it is. */
export type SessionDay = {
  /** Days after the first session. */
  readonly daysOn: number;
  readonly date?: CalendarDay;
  readonly weekday?: Weekday;
  readonly from: Minutes;
  readonly to: Minutes;
};

/** Past this many days without one, nobody works any more. */
const LONGEST_BREAK = 400;

/**
 * The first `count` days on which somebody works, from a day on. Single dates are taken as they are; where
 * weekdays are named too, they go on week by week. Single dates alone may end before `count` is reached. Without a
 * first day it is the first weekday that is named, and no day has a date.
 */
export function sessionDays(
  { firstDay, days }: SessionHabit,
  count: number,
): readonly SessionDay[] {
  const single = days.filter(({ on }) => on.length > 3).map(({ on }) => dayNumber(on));
  const known = firstDay !== undefined || single.length > 0;
  const start = firstDay === undefined ? firstOf(days, single) : dayNumber(firstDay);
  const found: SessionDay[] = [];
  for (let number = start; number < start + LONGEST_BREAK && found.length < count; number++) {
    const weekday = weekdayOfNumber(number);
    const date = dayOfNumber(number);
    const day = days.find(({ on }) => on === date) ?? days.find(({ on }) => on === weekday);
    if (day === undefined) continue;
    const { from, to } = day;
    const named = days.length < WEEKDAYS.length || known ? { weekday } : {};
    found.push({ daysOn: number - start, ...(known ? { date } : {}), ...named, from, to });
  }
  const [first] = found;
  return found.map(day => ({ ...day, daysOn: day.daysOn - (first?.daysOn ?? 0) }));
}

/** Any Monday: without a first day only the distance between days counts. */
const A_MONDAY = dayNumber('1970-01-05');

function firstOf(days: SessionHabit['days'], single: readonly number[]): number {
  if (single.length > 0) return Math.min(...single);
  const [first] = days;
  return A_MONDAY + Math.max(0, WEEKDAYS.indexOf((first?.on ?? 'mon') as Weekday));
}
