import { capital } from '../../measure/capital.js';
import { quoted } from '../../measure/parsed.js';
import type { FormulaProblem } from '../problem.js';
import { didYouMean, sentences, type WordsFor } from './wording.js';

/** How mistakes in formulas are said. */
export const FORMULA_WORDS: WordsFor<FormulaProblem> = {
  'formula-empty': () => ({
    problem: 'There is no formula behind the =.',
    hint: 'Write one such as = seat + 2 * planter.',
  }),
  'formula-too-long': ({ length, most }) => ({
    problem: `This formula has ${length} characters, more than ${most}.`,
    hint: 'Give a part of it a name under let.',
  }),
  'formula-too-deep': ({ most }) => ({
    problem: `This formula has more than ${most} parentheses inside each other.`,
    hint: 'Give a part of it a name under let.',
  }),
  'formula-bad-character': ({ character }) => ({
    problem: `${quoted(character)} means nothing in a formula.`,
    hint: 'Use + - * / ( ) , and = != < <= > >= with names, numbers and lengths.',
  }),
  'formula-text-open': () => ({
    problem: 'A text begins here and has no closing quote.',
    hint: 'Write it such as slat = "thick".',
  }),
  'formula-bad-number': ({ text }) => ({
    problem: `${quoted(text)} is too large a number.`,
    hint: 'Check it for a slip of the keys.',
  }),
  'formula-expected': ({ expected, found }) => ({
    problem: `The formula needs ${expected} here and has ${shortened(found)}.`,
    hint: '',
  }),
  'formula-two-comparisons': () => ({
    problem: 'Two comparisons stand in one row.',
    hint: 'Join them with and: a < b and b < c.',
  }),
  'formula-unknown-call': ({ name, near }) => ({
    problem: `${quoted(name)} is not something a formula can do.`,
    hint: sentences(didYouMean(near), 'There are min, max, floor, ceil, round, abs and if.'),
  }),
  'formula-call-count': ({ name, wants, given }) => ({
    problem: `${name} takes ${wants} ${wants === '1' ? 'value' : 'values'} and is given ${given}.`,
    hint: name === 'if' ? 'Write if(condition, value, other value).' : '',
  }),
  unreadable: ({ problem, hint }) => ({ problem, hint }),
  'unknown-name': ({ name, near }) => ({
    problem: `Nothing here is called ${quoted(name)}.`,
    hint: didYouMean(near),
  }),
  'kinds-differ': ({ doing, left, right }) => ({
    problem: `${capital(left)} and ${right} cannot be ${doing}.`,
    hint: differHint(left, right),
  }),
  'wrong-kind': ({ what, wanted, got }) => ({
    problem: `${said(what)} needs ${wanted} and gets ${got}.`,
    hint: wanted === 'a length' && got === 'a plain number' ? 'Write its unit, such as 2 in.' : '',
  }),
  'divides-by-zero': ({ what }) => ({
    problem: `This divides by ${quoted(what)}, which is zero.`,
    hint: 'Keep it from being zero with max, or with if.',
  }),
  'too-large': ({ what }) => ({
    problem: `${quoted(what)} is larger than anything built of wood.`,
    hint: 'Check it for a slip of the keys.',
  }),
  circular: ({ names }) => ({
    problem: `These sizes wait for each other: ${names.join(', ')}.`,
    hint: 'Work one of them out without the others.',
  }),
};

function differHint(left: string, right: string): string {
  const both = [left, right];
  if (both.includes('a length') && both.includes('a plain number')) {
    return 'Give the number its unit, such as 2 in.';
  }
  if (both.includes('a length') && both.includes('an area')) {
    return 'A length times a length is an area; divide one of them out again.';
  }
  return '';
}

function shortened(found: string): string {
  return found.startsWith('"') ? quoted(found.slice(1, -1)) : found;
}

/** A sentence begins with a capital, but the words of a formula keep their spelling. */
function said(what: string): string {
  return what.includes(' ') ? capital(what) : what;
}
