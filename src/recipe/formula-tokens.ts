import { parseLength } from '../measure/length.js';
import { unitOf } from '../measure/length-units.js';
import type { Place } from './place.js';
import type { FormulaProblem, Problem } from './problem.js';

/** One word, number, length, text or sign of a formula, and the offset where it begins. */
export type Token =
  | { readonly kind: 'number' | 'length'; readonly value: number; readonly start: number }
  | { readonly kind: 'text'; readonly value: string; readonly start: number }
  | { readonly kind: 'name'; readonly value: string; readonly start: number }
  | { readonly kind: 'sign'; readonly value: string; readonly start: number }
  | { readonly kind: 'end'; readonly start: number };

/** Where an offset of the formula's text stands in the file. */
export type PlaceOf = (offset: number) => Place;

const SPACE = /\s+/y;
const NAME = /[a-z_][a-z0-9_]*(?:\.[a-z_][a-z0-9_]*)*/iy;
const SIGN = /!=|<=|>=|[-+*/=<>(),]/y;
const TEXT = /"[^"]*"/y;
const NUMBER = /\d+(?:\.\d+)?/y;
/** A number, fraction or mixed number written together: 5, 2.5, 3/8, 1-1/2. */
const MEASURE = String.raw`(?:\d+-\d+\/\d+|\d+\/\d+|\d+(?:\.\d+)?)`;
/** One amount with its unit, or feet and inches behind each other. */
const AMOUNTS = new RegExp(`${MEASURE}\\s*([a-z]+)(?:\\s+${MEASURE}\\s*[a-z]+)*(?![\\w.])`, 'iy');
const ONE_AMOUNT = new RegExp(`${MEASURE}\\s*([a-z]+)(?![\\w.])`, 'iy');

/**
 * Splits the text of a formula: `seat + 2 * 1-1/2 in` is a name, a sign, a number, a sign and a length.
 * A number with a unit right behind it is one length; without a unit `3/8` is a division.
 */
export function formulaTokens(text: string, placeOf: PlaceOf): Token[] | Problem {
  const tokens: Token[] = [];
  let start = skipSpace(text, 0);
  while (start < text.length) {
    const found = tokenAt(text, start);
    if ('is' in found) return { kind: found, at: placeOf(start) };
    tokens.push(found.token);
    start = skipSpace(text, found.end);
  }
  return [...tokens, { kind: 'end', start: text.trimEnd().length }];
}

/** No count, price or length in a recipe comes near it. */
const LARGEST = 1e12;
/** `a > 2 and b`: words that follow a number without being its unit. */
const WORDS_BEHIND_NUMBERS: readonly string[] = ['and', 'or'];

type Found = { readonly token: Token; readonly end: number };

function tokenAt(text: string, start: number): Found | FormulaProblem {
  const length = lengthAt(text, start);
  if (length !== undefined) return length;
  const number = match(NUMBER, text, start);
  if (number !== undefined) return numberToken(number, start);
  const name = match(NAME, text, start);
  if (name !== undefined) return found({ kind: 'name', value: name, start }, name);
  const quote = match(TEXT, text, start);
  if (quote !== undefined) {
    return found({ kind: 'text', value: quote.slice(1, -1), start }, quote);
  }
  const sign = match(SIGN, text, start);
  if (sign !== undefined) return found({ kind: 'sign', value: sign, start }, sign);
  if (text[start] === '"') return { is: 'formula-text-open' };
  const [character = ''] = Array.from(text.slice(start, start + 2));
  return { is: 'formula-bad-character', character };
}

function lengthAt(text: string, start: number): Found | FormulaProblem | undefined {
  const [first, unit = ''] = execAt(ONE_AMOUNT, text, start) ?? [];
  if (first === undefined || WORDS_BEHIND_NUMBERS.includes(unit)) return undefined;
  const both = match(AMOUNTS, text, start);
  const joined = both !== undefined && hasOnlyUnits(both) ? both : first;
  const read = parseLength(joined, 'inch');
  if (!read.ok) return { is: 'unreadable', problem: read.problem, hint: read.hint };
  return found({ kind: 'length', value: read.value, start }, joined);
}

function hasOnlyUnits(text: string): boolean {
  const words = text.toLowerCase().match(/[a-z]+/g) ?? [];
  return words.every(word => unitOf(word) !== undefined);
}

function numberToken(digits: string, start: number): Found | FormulaProblem {
  const value = Number(digits);
  if (value > LARGEST) return { is: 'formula-bad-number', text: digits };
  return found({ kind: 'number', value, start }, digits);
}

function found(token: Token, written: string): Found {
  return { token, end: token.start + written.length };
}

function skipSpace(text: string, start: number): number {
  return start + (match(SPACE, text, start) ?? '').length;
}

function match(pattern: RegExp, text: string, start: number): string | undefined {
  return execAt(pattern, text, start)?.[0];
}

function execAt(pattern: RegExp, text: string, start: number): RegExpExecArray | null {
  pattern.lastIndex = start;
  return pattern.exec(text);
}
