import { readDecimal } from './decimal.js';
import { type Parsed, parsed, quoted, unreadable } from './parsed.js';
import type { Cents } from './quantities.js';

/** A million; more for a board is a slip of the keys. */
const MOST: Cents = 100_000_000;
const SIGN = String.raw`(?:\p{Sc}|\b(?:usd|eur|gbp|cad|aud|nzd|chf)\b)`;
const AMOUNT = new RegExp(`^(?:${SIGN})?\\s*([\\d.,]+)\\s*(?:${SIGN})?$`, 'iu');
const HINT = 'Write the price with at most two decimals, such as 7.48.';

/**
 * A price in whole cents of whatever currency it was typed in: `7.48`, `$7.48`, `7,48`, `€ 12`.
 * Refused: less than zero, more than two decimals, `1,200` (two readings), anything else.
 */
export function parseMoney(text: string): Parsed<Cents> {
  const typed = text.trim();
  if (typed === '') return unreadable('No price was given.', HINT);
  if (/^[-−]/u.test(typed)) return unreadable(`${quoted(text)} is less than zero.`, HINT);
  const [, amount = ''] = AMOUNT.exec(typed) ?? [];
  if (amount === '') return unreadable(`${quoted(text)} is not a price.`, HINT);
  const decimal = readDecimal(amount);
  if (decimal.kind === 'none') return unreadable(`${quoted(amount)} is not a number.`, HINT);
  if (decimal.kind === 'two-readings') {
    const { asDecimal, asThousands } = decimal;
    return unreadable(
      `${quoted(amount)} can be read as ${asDecimal} or as ${asThousands}.`,
      `Write ${asThousands}.00 or ${Number(asDecimal).toFixed(2)}.`,
    );
  }
  return cents(text, decimal.digits);
}

/** Digits are put together, not multiplied, so that 1.15 is 115 and not 114.99999999999999. */
function cents(text: string, digits: string): Parsed<Cents> {
  const [whole = '0', fraction = ''] = digits.split('.');
  const shown = fraction.replace(/0+$/, '');
  if (shown.length > 2) return unreadable(`${quoted(text)} has parts of a cent.`, HINT);
  const value = Number(whole + shown.padEnd(2, '0'));
  if (value > MOST) return unreadable(`${quoted(text)} is more than a million.`, HINT);
  return parsed(value);
}

/** Cents as a price without a currency sign: 748 is "7.48". */
export function formatMoney(amount: Cents): string {
  const whole = Math.round(amount);
  const digits = String(Math.abs(whole)).padStart(3, '0');
  return `${whole < 0 ? '-' : ''}${digits.slice(0, -2)}.${digits.slice(-2)}`;
}
