import { capital } from './capital.js';
import { type Parsed, parsed, quoted, unreadable } from './parsed.js';
import { DAY_MS } from './spans.js';

/** A day of the calendar, `2026-12-04`. */
export type CalendarDay = string;

export const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'] as const;
export type Weekday = (typeof WEEKDAYS)[number];

const MONTHS = 'jan feb mar apr may jun jul aug sep oct nov dec'.split(' ');
const HINT = 'Write year, month and day, such as 2026-12-04, or Dec 4 2026.';
const NUMBERS = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const MONTH_FIRST = /^([a-z]{3,9})\.? (\d{1,2})(?:st|nd|rd|th)?,? (\d{4})$/;
const DAY_FIRST = /^(\d{1,2})(?:st|nd|rd|th|\.)? ([a-z]{3,9})\.?,? (\d{4})$/;

/**
 * A day of the calendar: `2026-12-04`, `Dec 4 2026`, `4 December 2026`. Refused: numbers whose order differs
 * from country to country (12/4/2026), a day without its year, a day that no calendar has.
 */
export function parseDay(text: string): Parsed<CalendarDay> {
  const typed = text.trim().toLowerCase().replace(/\s+/g, ' ');
  const found = dayParts(typed);
  if (found === undefined) {
    const [, first, second, year] = /^(\d{1,2})[/.](\d{1,2})[/.](\d{4})$/.exec(typed) ?? [];
    const problem =
      year === undefined
        ? `${quoted(text)} is not a day of the calendar.`
        : `${quoted(text)} can be month ${first}, day ${second}, or the other way round.`;
    return unreadable(problem, HINT);
  }
  const day = dayText(found);
  return day === undefined
    ? unreadable(`No calendar has the day ${quoted(text)}.`, HINT)
    : parsed(day);
}

type DayParts = { readonly year: number; readonly month: number; readonly day: number };

function dayParts(typed: string): DayParts | undefined {
  const [numbers, year, month, day] = NUMBERS.exec(typed) ?? [];
  if (numbers !== undefined) return { year: Number(year), month: Number(month), day: Number(day) };
  const [named, name, dayAfter, yearAfter] = MONTH_FIRST.exec(typed) ?? [];
  if (named !== undefined) return withMonth(name, dayAfter, yearAfter);
  const [before, dayBefore, nameAfter, yearLast] = DAY_FIRST.exec(typed) ?? [];
  return before === undefined ? undefined : withMonth(nameAfter, dayBefore, yearLast);
}

function withMonth(name = '', day = '', year = ''): DayParts | undefined {
  const at = MONTHS.indexOf(name.slice(0, 3));
  return at < 0 ? undefined : { year: Number(year), month: at + 1, day: Number(day) };
}

function dayText({ year, month, day }: DayParts): CalendarDay | undefined {
  const instant = new Date(Date.UTC(year, month - 1, day));
  const same = instant.getUTCMonth() === month - 1 && instant.getUTCDate() === day;
  return same && year >= 1000 ? instant.toISOString().slice(0, 10) : undefined;
}

/** Days since January 1, 1970. */
export function dayNumber(day: CalendarDay): number {
  return Date.parse(`${day}T00:00:00Z`) / DAY_MS;
}

/** The day with this number: `dayNumber` the other way. */
export function dayOfNumber(number: number): CalendarDay {
  return new Date(number * DAY_MS).toISOString().slice(0, 10);
}

/** @example weekdayOf('2026-12-04') // 'fri' */
export function weekdayOf(day: CalendarDay): Weekday {
  return weekdayOfNumber(dayNumber(day));
}

/** January 1, 1970 was a Thursday. */
const THURSDAY = 3;

/** The weekday of the day with this number. */
export function weekdayOfNumber(number: number): Weekday {
  return WEEKDAYS[(((number + THURSDAY) % 7) + 7) % 7] ?? 'mon';
}

/** A weekday by its name or the first letters of it: `Tue`, `tuesday`, `tues`. */
export function parseWeekday(text: string): Weekday | undefined {
  const typed = text.trim().toLowerCase().replace(/\.$/, '');
  return FULL_NAMES.find(name => typed.length >= 2 && name.startsWith(typed))?.slice(0, 3) as
    | Weekday
    | undefined;
}

const FULL_NAMES = 'monday tuesday wednesday thursday friday saturday sunday'.split(' ');

/** @example weekdayWords('fri') // 'Fri' */
export function weekdayWords(day: Weekday): string {
  return capital(day);
}

/** @example formatDay('2026-12-04') // 'Fri Dec 4' */
export function formatDay(day: CalendarDay): string {
  const [, month = '1', date = '1'] = day.split('-');
  const name = MONTHS[Number(month) - 1] ?? '';
  return `${weekdayWords(weekdayOf(day))} ${capital(name)} ${Number(date)}`;
}

/** @example formatDayAndYear('2026-12-04') // 'Fri Dec 4 2026' */
export function formatDayAndYear(day: CalendarDay): string {
  return `${formatDay(day)} ${day.slice(0, 4)}`;
}
