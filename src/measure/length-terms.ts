import { readDecimal } from './decimal.js';
import { type LengthUnit, UNIT_WORDS, unitOf } from './length-units.js';
import { type Parsed, parsed, quoted, unreadable } from './parsed.js';
import { nearestWord } from './suggest.js';

/**
 * The number of one term as written: a fraction is worth its value, a decimal may read two ways.
 */
export type Written =
  | { readonly kind: 'fraction'; readonly value: number }
  | { readonly kind: 'decimal'; readonly text: string };

/** A number and the unit behind it, if one stands there. */
export type Term = { readonly number: Written; readonly unit: LengthUnit | undefined };

const MIXED = /^(\d+)(?: |-)(\d+) ?\/ ?(\d+)/;
const FRACTION = /^(\d+) ?\/ ?(\d+)/;
const DECIMAL = /^[.,]?\d[\d.,]*/;
const UNIT = /^ ?("|'|\p{L}+\.?)/u;
/** Between feet and inches people write nothing, a space, a dash or a comma. */
const BETWEEN = /^ ?[-,]? ?/;

/** Splits a plain length text into its numbers with units: `5' 3-1/2"` has two terms. */
export function lengthTerms(text: string): Parsed<readonly Term[]> {
  const terms: Term[] = [];
  let rest = text;
  while (rest !== '') {
    const term = firstTerm(rest);
    if (!term.ok) return term;
    const { number, unit, after } = term.value;
    terms.push({ number, unit });
    if (after === '') return parsed(terms);
    if (unit === undefined) return strayText(text, after);
    rest = after.replace(BETWEEN, '');
  }
  return unreadable(`${quoted(text)} breaks off.`, 'Write the rest of it, such as 5 ft 3-1/2 in.');
}

function firstTerm(text: string): Parsed<Term & { readonly after: string }> {
  const number = firstNumber(text);
  if (!number.ok) return number;
  const { written, after } = number.value;
  const [whole, word = ''] = UNIT.exec(after) ?? ['', ''];
  if (word === '') return parsed({ number: written, unit: undefined, after });
  const unit = unitOf(word.replace('.', ''));
  if (unit === undefined) return unknownUnit(word);
  return parsed({ number: written, unit, after: after.slice(whole.length).trimStart() });
}

function unknownUnit(word: string): Parsed<never> {
  const near = nearestWord(word, UNIT_WORDS);
  const known = 'Units are ft, in, m, cm and mm, as in 5 ft 3-1/2 in or 1180 mm.';
  const hint = near === undefined ? known : `Did you mean ${near}? ${known}`;
  return unreadable(`${quoted(word)} is not a unit of length.`, hint);
}

type Found = { readonly written: Written; readonly after: string };

function firstNumber(text: string): Parsed<Found> {
  const mixed = MIXED.exec(text);
  if (mixed !== null) {
    const [found, whole = '', top = '', bottom = ''] = mixed;
    if (Number(top) >= Number(bottom) && Number(bottom) > 0) {
      return unreadable(
        `In ${quoted(found)} the fraction is one or more.`,
        'Write a whole number and a fraction below one, such as 4-1/8.',
      );
    }
    return fraction(Number(whole), top, bottom, text.slice(found.length));
  }
  const alone = FRACTION.exec(text);
  if (alone !== null) {
    const [found, top = '', bottom = ''] = alone;
    return fraction(0, top, bottom, text.slice(found.length));
  }
  const [found = ''] = DECIMAL.exec(text) ?? [];
  if (found === '') return noNumber(text);
  if (readDecimal(found).kind === 'none') {
    return unreadable(
      `${quoted(found)} is not a number.`,
      'Write one point or comma, such as 63.5.',
    );
  }
  return parsed({ written: { kind: 'decimal', text: found }, after: text.slice(found.length) });
}

function fraction(whole: number, top: string, bottom: string, after: string): Parsed<Found> {
  const parts = Number(bottom);
  if (parts === 0) {
    return unreadable(`${quoted(`${top}/${bottom}`)} divides by zero.`, 'Write it such as 5/8 in.');
  }
  const value = whole + Number(top) / parts;
  return parsed({ written: { kind: 'fraction', value }, after });
}

function noNumber(text: string): Parsed<never> {
  if (text.startsWith('-')) {
    return unreadable(
      `${quoted(text)} is less than zero, and a length cannot be.`,
      'Leave the minus out, such as 46-1/2 in.',
    );
  }
  return unreadable(
    `There is no number where one should stand: ${quoted(text)}.`,
    'Write a number and a unit, such as 46-1/2 in or 1180 mm.',
  );
}

function strayText(text: string, after: string): Parsed<never> {
  if (after.trimStart().startsWith('-')) {
    return unreadable(
      `The dash in ${quoted(text)} can join a fraction to its inches, or take one number from another.`,
      'Write 3-1/2 without spaces for three and a half, or work the sum out first.',
    );
  }
  return unreadable(
    `In ${quoted(text)} the part ${quoted(after)} does not follow from what is before it.`,
    'Write feet, inches and one fraction, each once, such as 5 ft 3-1/2 in.',
  );
}
