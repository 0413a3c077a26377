import { HALF_MILLIMETERS, SIXTY_FOURTHS } from '../measure/displays.js';
import { formatLength, formatLengthExact } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snap } from '../measure/round.js';

/** Off the marks of the tape by more than this share of their distance, a length is only about right. */
const OFF = 0.02;
/** Below this a 32nd or 64th is read from a rule and not from the tape. */
const FINE: Mm = inches(1 / 8);

/**
 * A length as a person can see it on the tape: 0.4615 in is "about 7/16 in", 41 in is "41 in", a hair
 * is "less than 1/16 in".
 */
export function onTheTape(length: Mm, display: Display): string {
  if (!isOff(length, display)) return formatLength(length, display);
  // A tolerance of 1/32 in is said as it is, though the marks are made in sixteenths.
  const fine = Math.abs(length) < FINE && display.system === 'inch';
  if (fine && !isOff(length, SIXTY_FOURTHS)) {
    return formatLength(length, SIXTY_FOURTHS);
  }
  if (Math.abs(length) < display.grid / 2)
    return `less than ${formatLength(display.grid, display)}`;
  return `about ${formatLength(length, display)}`;
}

/** A small length as a steel rule shows it, in 64ths or half millimeters: 0.1099 in is "about 7/64 in". */
export function onTheRule(length: Mm, { system }: Display): string {
  return onTheTape(length, system === 'inch' ? SIXTY_FOURTHS : HALF_MILLIMETERS);
}

/** The same with the computed length behind it, where sums go on from it: "about 3/16 in (0.1786 in)". */
export function tapeAndExact(length: Mm, display: Display): string {
  const onTape = onTheTape(length, display);
  return isOff(length, display) ? `${onTape} (${formatLengthExact(length, display)})` : onTape;
}

function isOff(length: Mm, { grid }: Display): boolean {
  return Math.abs(length - snap(length, grid)) > grid * OFF;
}
