import { type Parsed, parsed, quoted, unreadable } from './parsed.js';
import type { Minutes } from './quantities.js';
import { DAY } from './spans.js';

const HINT = 'Write it such as 17:40 or 5:40 pm.';
const TEXT = /^(\d{1,2})(?::(\d\d))?\s*(am|pm|a\.m\.|p\.m\.)?$/;

/**
 * A time of day in minutes since midnight: `17:40`, `5:40 pm`, `9 am`. Refused: a bare number (is 9 in
 * the morning or at night?), hours and minutes that no clock shows, anything else.
 */
export function parseClock(text: string): Parsed<Minutes> {
  const [, hours = '', minutes, half] = TEXT.exec(text.trim().toLowerCase()) ?? [];
  if (hours === '') return unreadable(`${quoted(text)} is not a time of day.`, HINT);
  if (minutes === undefined && half === undefined)
    return unreadable(`${quoted(text)} can be in the morning or at night.`, HINT);
  const hour = Number(hours);
  const minute = Number(minutes ?? 0);
  const shown = half === undefined ? hour <= 23 : hour >= 1 && hour <= 12;
  if (!shown || minute > 59) return unreadable(`No clock shows ${quoted(text)}.`, HINT);
  if (half === undefined) return parsed(hour * 60 + minute);
  return parsed((hour % 12) * 60 + minute + (half.startsWith('p') ? DAY / 2 : 0));
}

/** Minutes since midnight as a time of day: 1060 is "17:40"; past midnight it begins anew. */
export function formatClock(minutes: Minutes): string {
  const whole = ((Math.round(minutes) % DAY) + DAY) % DAY;
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, '0')}`;
}
