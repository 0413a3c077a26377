import {
  type CalendarDay,
  formatDayAndYear,
  parseDay,
  parseWeekday,
  WEEKDAYS,
  type Weekday,
  weekdayWords,
} from '../../measure/calendar.js';
import { formatClock, parseClock } from '../../measure/clock.js';
import { type Parsed, parsed, quoted, unreadable } from '../../measure/parsed.js';
import type { Minutes } from '../../measure/quantities.js';
import type { WorkDay } from '../values.js';
import { isNone } from './split-list.js';

const MOST = 60;
const HINT = 'Write such as Tue Thu, weekdays, Sat 9:00-16:00 or 2026-12-04.';
const CLOCK = '(\\d{1,2}(?::\\d\\d)?(?: ?[ap]\\.?m\\.?)?)';
const HOURS = new RegExp(`\\s+${CLOCK}\\s*(?:-|–|to)\\s*${CLOCK}$`, 'i');
const GROUPS: Readonly<Record<string, readonly Weekday[]>> = {
  'every day': WEEKDAYS,
  daily: WEEKDAYS,
  weekdays: WEEKDAYS.slice(0, 5),
  weekends: WEEKDAYS.slice(5),
  weekend: WEEKDAYS.slice(5),
};

/**
 * Days on which somebody works, each with hours of its own where they differ: `Tue Thu, Sat 9:00-16:00`,
 * `weekdays`, `2026-12-04, 2026-12-05 9:00-16:00`. Refused: a text that names no day, hours that end before they
 * begin, the same day twice.
 */
export function parseDays(text: string): Parsed<readonly WorkDay[]> {
  const days: WorkDay[] = [];
  for (const piece of text.split(/[;,\n]/).map(it => it.trim())) {
    if (piece === '') continue;
    const read = parsePiece(piece);
    if (!read.ok) return read;
    days.push(...read.value);
  }
  if (days.length === 0) return unreadable('No day is named.', HINT);
  if (days.length > MOST) return unreadable(`These are more than ${MOST} days.`, HINT);
  const twice = days.find(({ on }, at) => days.findIndex(other => other.on === on) < at);
  return twice === undefined
    ? parsed(days)
    : unreadable(`${dayWords(twice.on)} is named twice.`, 'Name each day once.');
}

function parsePiece(piece: string): Parsed<readonly WorkDay[]> {
  const hours = HOURS.exec(piece);
  const names = hours === null ? piece : piece.slice(0, hours.index);
  const days = parseNames(names);
  if (!days.ok || hours === null) return days;
  const from = parseClock(hours[1] ?? '');
  if (!from.ok) return from;
  const to = parseClock(hours[2] ?? '');
  if (!to.ok) return to;
  if (to.value <= from.value)
    return unreadable(`${quoted(piece)} ends before it begins.`, 'Write the earlier hour first.');
  return parsed(days.value.map(({ on }) => ({ on, from: from.value, to: to.value })));
}

function parseNames(text: string): Parsed<readonly WorkDay[]> {
  const typed = text.trim().toLowerCase();
  const group = Object.hasOwn(GROUPS, typed) ? GROUPS[typed] : undefined;
  if (group !== undefined) return parsed(group.map(on => ({ on })));
  const whole = parseDay(text);
  if (whole.ok) return parsed([{ on: whole.value }]);
  const days: WorkDay[] = [];
  for (const word of text.split(/\s+(?:and\s+)?/)) {
    const day = parseWeekday(word) ?? calendarDay(word);
    if (day === undefined) return unreadable(`${quoted(word)} is not a day.`, HINT);
    days.push({ on: day });
  }
  return parsed(days);
}

function calendarDay(word: string): CalendarDay | undefined {
  const read = parseDay(word);
  return read.ok ? read.value : undefined;
}

/** A day of the calendar, or empty where none is fixed yet. */
export function parseDate(text: string): Parsed<CalendarDay | ''> {
  return isNone(text) ? parsed('') : parseDay(text);
}

/** The days as they are typed: "Tue Thu, Sat 9:00-16:00". */
export function daysText(days: readonly WorkDay[]): string {
  if (days.length === WEEKDAYS.length && days.every(({ from }) => from === undefined))
    return 'every day';
  const pieces: { hours: string; names: string[] }[] = [];
  for (const { on, from, to } of days) {
    const hours = hoursText(from, to);
    const last = pieces.at(-1);
    const alone = on.length > 3;
    if (last !== undefined && last.hours === hours && !alone) last.names.push(dayWords(on));
    else pieces.push({ hours, names: [dayWords(on)] });
  }
  return pieces.map(({ hours, names }) => names.join(' ') + hours).join(', ');
}

function hoursText(from: Minutes | undefined, to: Minutes | undefined): string {
  return from === undefined || to === undefined ? '' : ` ${formatClock(from)}-${formatClock(to)}`;
}

function dayWords(on: WorkDay['on']): string {
  const weekday = WEEKDAYS.find(name => name === on);
  return weekday === undefined ? formatDayAndYear(on).slice(4) : weekdayWords(weekday);
}
