import stringWidth from 'string-width';

/**
 * Characters that are one cell wide in every terminal we know: printable ASCII, Latin-1 without the
 * soft hyphen, fractions, curly quotes and dashes, primes, arrows, box drawing and blocks.
 */
const ONE_CELL =
  /^[\x20-\x7e\xa0-\xac\xae-\xff\u2013\u2014\u2018-\u201f\u2022\u2026\u2032\u2033\u2044\u2150-\u215f\u2190-\u2193\u2212\u2248\u2260\u2264\u2265\u2500-\u259f]*$/;

/** Terminal cells a line takes. Plain text is counted at once; anything else is measured. */
export function textWidth(text: string): number {
  return ONE_CELL.test(text) ? text.length : stringWidth(text);
}
