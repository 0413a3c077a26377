import { readDecimal } from './decimal.js';
import { feet } from './inch.js';
import { lengthTerms, type Term, type Written } from './length-terms.js';
import { plainLengthText } from './length-text.js';
import { type Amount, isCoarser, type LengthUnit, systemOf, totalLength } from './length-units.js';
import { type Parsed, parsed, quoted, unreadable } from './parsed.js';
import type { Display, Mm } from './quantities.js';

/** Nothing built by hand is longer than this; a longer figure is a slip of the keys. */
const LONGEST: Mm = 100_000;
const LONGEST_TEXT = 60;

/**
 * A length as people write it, in mm: `5' 3-1/2"`, `63.5in`, `3½"`, `1.2 m`, `1,5 m`. A number
 * without a unit is inches or mm by `assume`; behind feet it is inches. Refused: what has two
 * readings (`1,200`, `3 - 1/2`, a bare fraction in metric), mixed systems, minus, nonsense, and
 * more than 100 m. Zero is read; the caller checks its own range.
 */
export function parseLength(text: string, assume: Display['system']): Parsed<Mm> {
  const plain = plainLengthText(text);
  if (plain === '') return unreadable('No length was given.', `Write one, ${example(assume)}.`);
  if (plain.length > LONGEST_TEXT) {
    return unreadable(
      `${quoted(plain)} is too long a text for a length.`,
      `Write just the length, ${example(assume)}.`,
    );
  }
  if (!/\d/.test(plain)) {
    return unreadable(
      `${quoted(text)} is not a length: it has no number.`,
      `Write a number and a unit, ${example(assume)}.`,
    );
  }
  const terms = lengthTerms(plain);
  if (!terms.ok) return terms;
  const amounts = amountsOf(terms.value, assume);
  if (!amounts.ok) return amounts;
  return sum(plain, amounts.value);
}

function example(system: Display['system']): string {
  return system === 'inch' ? 'such as 46-1/2 in or 5 ft 3 in' : 'such as 1180 mm or 1.2 m';
}

function amountsOf(terms: readonly Term[], assume: Display['system']): Parsed<Amount[]> {
  const amounts: Amount[] = [];
  for (const term of terms) {
    const unit = term.unit ?? unitWithout(amounts, assume);
    if (unit === undefined) {
      return unreadable(
        'The last number has no unit.',
        'Write a unit behind each number, such as 1 m 20 cm.',
      );
    }
    if (term.unit === undefined && unit === 'mm' && term.number.kind === 'fraction') {
      return unreadable(
        'A fraction without a unit can be inches or millimeters.',
        'Write 3-1/2 in for inches, or 3.5 mm for millimeters.',
      );
    }
    const value = numberIn(term.number, unit);
    if (!value.ok) return value;
    amounts.push({ value: value.value, unit });
  }
  return parsed(amounts);
}

/** The unit of a number that has none: by the user's system, or inches when it follows feet. */
function unitWithout(before: readonly Amount[], assume: Display['system']): LengthUnit | undefined {
  const last = before.at(-1);
  if (last === undefined) return assume === 'inch' ? 'in' : 'mm';
  return last.unit === 'ft' ? 'in' : undefined;
}

function numberIn(number: Written, unit: LengthUnit): Parsed<number> {
  if (number.kind === 'fraction') return parsed(number.value);
  const decimal = readDecimal(number.text);
  if (decimal.kind === 'plain') return parsed(Number(decimal.digits));
  if (decimal.kind === 'none') throw new Error(`length term is no number: ${number.text}`);
  if (isDecimalMark(decimal.mark, unit)) return parsed(Number(decimal.asDecimal));
  const small = `${Number(decimal.asDecimal)} ${unit}`;
  const large = `${decimal.asThousands} ${unit}`;
  return unreadable(
    `${quoted(number.text)} can be read as ${small} or as ${large}.`,
    `Write ${large} or ${small}, without a mark before three digits.`,
  );
}

/**
 * Thousandths of an inch, or of a foot, are written with a point; nothing here is a thousand meters
 * long; and nobody marks thousandths of a mm, so there "1.200" may well be twelve hundred.
 */
function isDecimalMark(mark: ',' | '.', unit: LengthUnit): boolean {
  return unit === 'm' || (mark === '.' && systemOf(unit) === 'inch');
}

function sum(text: string, amounts: readonly Amount[]): Parsed<Mm> {
  const [first] = amounts;
  if (first === undefined) throw new Error(`length without an amount: ${text}`);
  const system = systemOf(first.unit);
  if (amounts.some(({ unit }) => systemOf(unit) !== system)) {
    return unreadable(
      `${quoted(text)} mixes feet or inches with metric units.`,
      'Write it in one of them, such as 5 ft 3-1/2 in or 1613 mm.',
    );
  }
  if (!goFromLargeToSmall(amounts)) {
    return unreadable(
      `${quoted(text)} does not go from the larger unit to the smaller.`,
      'Write feet before inches, meters before centimeters, each once, such as 5 ft 3-1/2 in.',
    );
  }
  const length = totalLength(amounts, system);
  if (length > LONGEST) {
    const most = system === 'inch' ? `${Math.floor(LONGEST / feet(1))} ft` : '100 m';
    return unreadable(`${quoted(text)} is longer than ${most}.`, 'Check the number and its unit.');
  }
  return parsed(length);
}

function goFromLargeToSmall(amounts: readonly Amount[]): boolean {
  let last: LengthUnit | undefined;
  for (const { unit } of amounts) {
    if (last !== undefined && !isCoarser(last, unit)) return false;
    last = unit;
  }
  return true;
}
