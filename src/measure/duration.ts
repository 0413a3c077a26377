import { type Parsed, parsed, quoted, unreadable } from './parsed.js';
import type { Minutes } from './quantities.js';
import { DAY } from './spans.js';

const HOUR: Minutes = 60;
const YEAR: Minutes = 365 * DAY;
const HINT = 'Write it such as 90 min, 1.5 h, 1:30 or 2 d 3 h.';

/**
 * Minutes for a person: "45 min", "1 h 30 min", "2 d 3 h". From a day on the nearest hour is
 * enough; below a minute it is seconds.
 */
export function formatMinutes(minutes: Minutes): string {
  if (minutes < 0) return `-${formatMinutes(-minutes)}`;
  if (minutes > 0 && minutes < 1) return `${Math.round(minutes * 60)} s`;
  const whole = minutes >= DAY ? Math.round(minutes / HOUR) * HOUR : Math.round(minutes);
  if (whole >= DAY) return pair([Math.floor(whole / DAY), 'd'], [(whole % DAY) / HOUR, 'h']);
  if (whole >= HOUR) return pair([Math.floor(whole / HOUR), 'h'], [whole % HOUR, 'min']);
  return `${whole} min`;
}

type Count = readonly [count: number, unit: string];

function pair([large, largeUnit]: Count, [small, smallUnit]: Count): string {
  return small === 0 ? `${large} ${largeUnit}` : `${large} ${largeUnit} ${small} ${smallUnit}`;
}

const UNITS: readonly (readonly [RegExp, Minutes])[] = [
  [/^d(?:ays?)?$/, DAY],
  [/^h(?:(?:ou)?rs?)?$/, HOUR],
  [/^m(?:in(?:ute)?s?)?$/, 1],
];

/**
 * A time span in minutes: `90 min`, `1.5 h`, `1:30` (hours and minutes), `2 d 3 h`, `3 hours`.
 * Refused: a bare number (minutes or hours?), more than a year, anything else.
 */
export function parseDuration(text: string): Parsed<Minutes> {
  const typed = text.trim().toLowerCase();
  if (typed === '') return unreadable('No time was given.', HINT);
  if (/^[-−]/u.test(typed)) return unreadable(`${quoted(text)} is less than zero.`, HINT);
  if (/^\d+(?:[.,]\d+)?$/.test(typed)) {
    return unreadable(
      `${quoted(text)} can be minutes or hours.`,
      `Write ${typed} min or ${typed} h.`,
    );
  }
  const clock = /^(\d{1,4}):(\d\d)$/.exec(typed);
  const minutes = clock === null ? spelledOut(typed) : onClock(clock);
  if (minutes === undefined) return unreadable(`${quoted(text)} is not a time span.`, HINT);
  if (minutes > YEAR) return unreadable(`${quoted(text)} is more than a year.`, HINT);
  return parsed(minutes);
}

function onClock([, hours, minutes]: RegExpExecArray): Minutes | undefined {
  return Number(minutes) < HOUR ? Number(hours) * HOUR + Number(minutes) : undefined;
}

function spelledOut(text: string): Minutes | undefined {
  const term = /\s*(\d+(?:[.,]\d+)?)\s*(\p{L}+)\.?\s*/uy;
  let total = 0;
  let lastScale = Number.POSITIVE_INFINITY;
  while (term.lastIndex < text.length) {
    const [, number = '', word = ''] = term.exec(text) ?? [];
    const [, scale] = UNITS.find(([spelling]) => spelling.test(word)) ?? [];
    if (scale === undefined || scale >= lastScale) return undefined;
    total += Number(number.replace(',', '.')) * scale;
    lastScale = scale;
  }
  return total;
}
