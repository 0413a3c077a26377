import type { CalendarDay } from '../measure/calendar.js';
import { DAY_MS } from '../measure/spans.js';

/** Further away than this a weekday alone could be taken for the wrong week. */
const WEEKDAYS_MS = 6 * DAY_MS;

/** A day as it is written on paper: "Tue, Nov 3, 2026". `zone` as for `clockWords`. */
export function dayWords(atMs: number, zone?: string): string {
  return formatsOf(zone).paper.format(atMs);
}

/** A month as it is written on paper: "November 2027". */
export function monthWords(atMs: number, zone?: string): string {
  return formatsOf(zone).month.format(atMs);
}

/** The time of day: "17:30". */
export function timeWords(atMs: number, zone?: string): string {
  return formatsOf(zone).time.format(atMs);
}

type Formats = {
  readonly time: Intl.DateTimeFormat;
  readonly weekday: Intl.DateTimeFormat;
  readonly monthAndDay: Intl.DateTimeFormat;
  readonly day: Intl.DateTimeFormat;
  readonly paper: Intl.DateTimeFormat;
  readonly month: Intl.DateTimeFormat;
};

/** Making one takes about as long as painting a screen, so each zone's are kept. */
const formatsByZone = new Map<string | undefined, Formats>();

/**
 * An instant as a wall clock shows it: "17:30" on the same day, "Tue 07:30" within six days, "Tue Nov
 * 3 07:30" further away. `zone` is the time zone; without it the machine's own.
 */
export function clockWords(atMs: number, nowMs: number, zone?: string): string {
  const { time, weekday, monthAndDay, day } = formatsOf(zone);
  const clock = time.format(atMs);
  if (day.format(atMs) === day.format(nowMs)) return clock;
  if (Math.abs(atMs - nowMs) < WEEKDAYS_MS) return `${weekday.format(atMs)} ${clock}`;
  return `${weekday.format(atMs)} ${monthAndDay.format(atMs)} ${clock}`;
}

/** Minutes since midnight that a wall clock shows at an instant; `zone` as above. */
export function clockMinutes(atMs: number, zone?: string): number {
  const [hours = '0', minutes = '0'] = formatsOf(zone).time.format(atMs).split(':');
  return Number(hours) * 60 + Number(minutes);
}

/** The day of the calendar at an instant, `2026-11-24`; `zone` as above. */
export function calendarDay(atMs: number, zone?: string): CalendarDay {
  const [month = '', day = '', year = ''] = formatsOf(zone).day.format(atMs).split('/');
  return `${year}-${month.padStart(2, '0')}-${day.padStart(2, '0')}`;
}

function formatsOf(zone: string | undefined): Formats {
  const known = formatsByZone.get(zone);
  if (known !== undefined) return known;
  const made = formatsIn(zone === undefined ? {} : { timeZone: zone });
  formatsByZone.set(zone, made);
  return made;
}

function formatsIn(zone: Intl.DateTimeFormatOptions): Formats {
  const format = (options: Intl.DateTimeFormatOptions) =>
    new Intl.DateTimeFormat('en-US', { ...zone, ...options });
  return {
    time: format({ hour: '2-digit', minute: '2-digit', hourCycle: 'h23' }),
    weekday: format({ weekday: 'short' }),
    monthAndDay: format({ month: 'short', day: 'numeric' }),
    day: format({ year: 'numeric', month: 'numeric', day: 'numeric' }),
    paper: format({ weekday: 'short', year: 'numeric', month: 'short', day: 'numeric' }),
    month: format({ year: 'numeric', month: 'long' }),
  };
}
