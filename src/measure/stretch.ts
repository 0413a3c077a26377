import { type Parsed, parsed } from './parsed.js';
import type { Mm } from './quantities.js';

/** Part of a board, both ends measured from one end of it. */
export type Stretch = { readonly from: Mm; readonly to: Mm };

/**
 * Every way to read a text as a stretch: `10-1/2in-14in`, `10 to 14`. A dash also joins inches to their
 * fraction, so every dash is tried; one way is the answer, none or several want to be asked about.
 */
export function stretchReadings(
  text: string,
  read: (end: string) => Parsed<Mm>,
): readonly Stretch[] {
  const dashes = [...text.matchAll(/-|–| to /g)];
  return dashes.flatMap(dash => {
    const from = zeroOr(text.slice(0, dash.index), read);
    const to = read(text.slice(dash.index + dash[0].length));
    return from.ok && to.ok && from.value < to.value ? [{ from: from.value, to: to.value }] : [];
  });
}

/** A stretch may begin at the very end: `0 to 8`. */
function zeroOr(text: string, read: (end: string) => Parsed<Mm>): Parsed<Mm> {
  return /^\s*0+\s*\p{L}*\s*$/u.test(text) ? parsed(0) : read(text);
}
