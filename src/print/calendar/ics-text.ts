import type { CalendarDay } from '../../measure/calendar.js';
import type { Minutes } from '../../measure/quantities.js';
import { MINUTE_MS } from '../../measure/spans.js';

/**
 * When: an instant, the same everywhere; a time on the clock of the garage, wherever that is; or a
 * whole day.
 */
export type When =
  | { readonly kind: 'instant'; readonly atMs: number }
  /** Minutes since midnight of the day; past 24 h they fall on a later one. */
  | { readonly kind: 'clock'; readonly day: CalendarDay; readonly minutes: Minutes }
  | { readonly kind: 'day'; readonly day: CalendarDay };

export type Occasion = {
  /** Stays the same when the file is made again, so that a calendar changes it and adds none. */
  readonly uid: string;
  readonly title: string;
  readonly about: string;
  readonly from: When;
  readonly to?: When;
  readonly everyYear?: boolean;
  /** So many minutes before it begins a calendar may ring. */
  readonly ringsBefore: Minutes;
};

/**
 * Occasions as an iCalendar stream (RFC 5545): CRLF, lines folded at 75 octets, times of the garage
 * floating, instants in universal time. `madeAtMs` is when the file is made.
 */
export function icsText(title: string, occasions: readonly Occasion[], madeAtMs: number): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Notchbook//Notchbook//EN',
    'CALSCALE:GREGORIAN',
    // RFC 7986, 5.1.
    `NAME:${escaped(title)}`,
    ...occasions.flatMap(occasion => eventLines(occasion, madeAtMs)),
    'END:VCALENDAR',
  ];
  return lines.map(line => `${folded(line)}\r\n`).join('');
}

function eventLines(occasion: Occasion, madeAtMs: number): readonly string[] {
  const { uid, title, about, from, to, everyYear, ringsBefore } = occasion;
  return [
    'BEGIN:VEVENT',
    `UID:${uid}`,
    `DTSTAMP:${instantText(madeAtMs)}`,
    `DTSTART${whenText(from)}`,
    ...(to === undefined ? [] : [`DTEND${whenText(to)}`]),
    ...(everyYear === true ? ['RRULE:FREQ=YEARLY'] : []),
    `SUMMARY:${escaped(title)}`,
    ...(about === '' ? [] : [`DESCRIPTION:${escaped(about)}`]),
    // Nobody is busy all day because of a reminder.
    ...(from.kind === 'clock' && to !== undefined ? [] : ['TRANSP:TRANSPARENT']),
    'BEGIN:VALARM',
    'ACTION:DISPLAY',
    `DESCRIPTION:${escaped(title)}`,
    `TRIGGER:${ringsBefore === 0 ? 'PT0S' : `-PT${ringsBefore}M`}`,
    'END:VALARM',
    'END:VEVENT',
  ];
}

/** With the colon, and what has to stand before it. */
function whenText(when: When): string {
  if (when.kind === 'instant') return `:${instantText(when.atMs)}`;
  if (when.kind === 'day') return `;VALUE=DATE:${when.day.replaceAll('-', '')}`;
  const instant =
    new Date(`${when.day}T00:00:00Z`).getTime() + Math.round(when.minutes) * MINUTE_MS;
  return `:${instantText(instant).replace('Z', '')}`;
}

/** RFC 5545, 3.3.5: 20261129T120000Z. */
function instantText(atMs: number): string {
  return new Date(atMs).toISOString().replace(/[-:]|\.\d+/g, '');
}

/** RFC 5545, 3.3.11. Controls that the grammar knows nothing of are left out. */
function escaped(text: string): string {
  return text
    .replace(/\r\n?/g, '\n')
    .replace(/[\x00-\x08\x0b-\x1f\x7f]/g, '')
    .replace(/[\\;,]/g, '\\$&')
    .replaceAll('\n', '\\n');
}

const MOST_OCTETS = 75;

/** RFC 5545, 3.1: no line is longer than 75 octets, and no letter is parted. */
function folded(line: string): string {
  let done = '';
  let used = 0;
  for (const letter of line) {
    const octets = Buffer.byteLength(letter);
    if (used + octets > MOST_OCTETS) {
      done += '\r\n ';
      used = 1;
    }
    done += letter;
    used += octets;
  }
  return done;
}
