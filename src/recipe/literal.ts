import { parseDuration } from '../measure/duration.js';
import { parseLength } from '../measure/length.js';
import { quoted } from '../measure/parsed.js';
import { cleanText } from './clean-text.js';
import type { Node } from './formula.js';
import type { FormulaProblem } from './problem.js';

/** What a place in the file wants when no formula stands there. */
export type Wanted = 'length' | 'number' | 'minutes' | 'flag' | 'text' | 'anything';

const NUMBER = /^-?(?:\d+(?:\.\d*)?|\.\d+)$/;
const FLAGS: ReadonlyMap<string, boolean> = new Map([
  ['yes', true],
  ['true', true],
  ['no', false],
  ['false', false],
]);

/**
 * The value of a plain word in the file: `48 in` is a length, `2` a number, `yes` a yes, and where
 * anything may stand, whatever is none of these is a text. Where a length is wanted only a length or 0
 * will do: `48` does not say of what.
 */
export function literal(written: string, wanted: Wanted): Node | FormulaProblem {
  const text = written.trim();
  switch (wanted) {
    case 'text':
      return { kind: 'text', value: cleanText(text) };
    case 'flag':
      return flagLiteral(text) ?? unread('is not yes or no.', text, 'Write yes or no.');
    case 'number':
      return numberLiteral(text) ?? unread('is not a number.', text, 'Write a number such as 2.');
    case 'minutes':
      return minutesLiteral(text);
    case 'length':
      return lengthLiteral(text);
    case 'anything':
      return anyLiteral(text);
  }
}

function anyLiteral(text: string): Node {
  const known = numberLiteral(text) ?? flagLiteral(text);
  if (known !== undefined) return known;
  const length = lengthLiteral(text);
  return 'is' in length ? { kind: 'text', value: cleanText(text) } : length;
}

function numberLiteral(text: string): Node | undefined {
  if (!NUMBER.test(text) || Math.abs(Number(text)) > 1e12) return undefined;
  return signed(text, positive => ({ kind: 'number', value: Number(positive) }));
}

function flagLiteral(text: string): Node | undefined {
  const value = FLAGS.get(text.toLowerCase());
  return value === undefined ? undefined : { kind: 'flag', value };
}

function lengthLiteral(text: string): Node | FormulaProblem {
  if (NUMBER.test(text) || /^\d[\d\s./-]*$/.test(text)) {
    if (Number(text) === 0) return { kind: 'number', value: 0 };
    return unread('has no unit.', text, `Write ${short(text)} in or ${short(text)} mm.`);
  }
  const read = parseLength(text.replace(/^-/, ''), 'inch');
  if (!read.ok) {
    return { is: 'unreadable', problem: read.problem, hint: read.hint };
  }
  return signed(text, () => ({ kind: 'length', value: read.value }));
}

function minutesLiteral(text: string): Node | FormulaProblem {
  const number = numberLiteral(text);
  if (number !== undefined) return number;
  const read = parseDuration(text);
  if (read.ok) return { kind: 'number', value: read.value };
  return { is: 'unreadable', problem: read.problem, hint: read.hint };
}

function signed(text: string, read: (positive: string) => Node): Node {
  return text.startsWith('-') ? { kind: 'minus', of: read(text.slice(1)) } : read(text);
}

function unread(problem: string, text: string, hint: string): FormulaProblem {
  return { is: 'unreadable', problem: `${quoted(text)} ${problem}`, hint };
}

function short(text: string): string {
  return cleanText(text).slice(0, 20);
}
