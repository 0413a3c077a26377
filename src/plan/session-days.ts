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
  /** Not one of the dates that were named: it comes after the last of them. */
  readonly beyond?: boolean;
  readonly from: Minutes;
  readonly to: Minutes;
};

/** No day of work within a year and a month: nobody works any more. A judgment of ours; it only ends the search. */
const LONGEST_BREAK = 400;

/**
 * The first `count` days on which somebody works, from a day on. Single dates are taken as they are; where
 * weekdays are named too, they go on week by week, and where none is, each day after the last date stands in with
 * the hours of that date, marked as beyond what was named. Without a first day it is the first weekday that is
 * named, and no day has a date.
 */
export function sessionDays(habit: SessionHabit, count: number): readonly SessionDay[] {
  const { firstDay, days } = habit;
  const dates = days.flatMap(({ on }) => (isDate(on) ? [dayNumber(on)] : []));
  const known = firstDay !== undefined || dates.length > 0;
  const start = firstDay === undefined ? firstOf(days, dates) : dayNumber(firstDay);
  const found: SessionDay[] = [];
  for (let number = start; number < start + LONGEST_BREAK && found.length < count; number++) {
    const day = dayOn(number, habit, Math.max(...dates));
    if (day === undefined) continue;
    const { from, to, beyond } = day;
    const weekday = known || days.length < WEEKDAYS.length ? weekdayOfNumber(number) : undefined;
    found.push({
      daysOn: number - start,
      ...(known && { date: dayOfNumber(number) }),
      ...(weekday && { weekday }),
      ...(beyond && { beyond }),
      from,
      to,
    });
  }
  const [first] = found;
  return found.map(day => ({ ...day, daysOn: day.daysOn - (first?.daysOn ?? 0) }));
}

function isDate(on: SessionHabit['days'][number]['on']): boolean {
  return /^\d/.test(on);
}

function dayOn(number: number, { days }: SessionHabit, lastDate: number) {
  const date = dayOfNumber(number);
  const weekday = weekdayOfNumber(number);
  const day = days.find(({ on }) => on === date) ?? days.find(({ on }) => on === weekday);
  if (day !== undefined) return { ...day, beyond: false };
  const last = days.find(({ on }) => isDate(on) && dayNumber(on) === lastDate);
  const onlyDates = days.every(({ on }) => isDate(on));
  return onlyDates && last !== undefined && number > lastDate
    ? { ...last, beyond: true }
    : undefined;
}

/** Any Monday: without a first day only the distance between days counts. */
const A_MONDAY = dayNumber('1970-01-05');

function firstOf(days: SessionHabit['days'], dates: readonly number[]): number {
  if (dates.length > 0) return Math.min(...dates);
  const [first] = days;
  return A_MONDAY + Math.max(0, WEEKDAYS.indexOf((first?.on ?? 'mon') as Weekday));
}
