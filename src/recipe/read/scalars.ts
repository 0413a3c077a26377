import { nearestWord } from '../../measure/suggest.js';
import { cleanText } from '../clean-text.js';
import type { Formula, Template } from '../formula.js';
import { literal, type Wanted } from '../literal.js';
import { isProblem, parseFormula } from '../parse-formula.js';
import { parseTemplate } from '../parse-template.js';
import type { Selector, Triple } from '../recipe.js';
import { type Entry, type ScalarEntry, shapeOf } from './entry.js';
import { type IdStyle, idText } from './ids.js';
import type { Log } from './log.js';
import type { Reader } from './reader.js';

const LONGEST_TEXT = 2000;

function asScalar(entry: Entry, log: Log, wanted: string): ScalarEntry | undefined {
  if (entry.kind !== 'scalar') {
    return log.say({ is: 'wrong-shape', wanted, got: shapeOf(entry) }, entry.at);
  }
  if (entry.text.length > LONGEST_TEXT) {
    const facts = { length: entry.text.length, most: LONGEST_TEXT };
    return log.say({ is: 'text-too-long', ...facts }, entry.at);
  }
  return entry;
}

/** A text for people, as one clean line; it must say something. */
export const textOf: Reader<string> = (entry, log) => {
  const scalar = asScalar(entry, log, 'a text');
  if (scalar === undefined) return undefined;
  const text = cleanText(scalar.text);
  return text === '' ? log.say({ is: 'empty-text' }, entry.at) : text;
};

/** A text with `{formula}` holes. */
export const templateOf: Reader<Template> = (entry, log) => {
  const scalar = asScalar(entry, log, 'a text');
  if (scalar === undefined) return undefined;
  if (cleanText(scalar.text) === '') return log.say({ is: 'empty-text' }, entry.at);
  const template = parseTemplate(scalar.text, scalar.placeOf);
  return isProblem(template) ? log.add(template) : template;
};

/** A formula when it starts with `=`, else a plain word of the wanted kind. */
export function formulaOf(wanted: Wanted): Reader<Formula> {
  return (entry, log) => {
    const scalar = asScalar(entry, log, 'a formula or a single value');
    if (scalar === undefined) return undefined;
    const { text, at, placeOf } = scalar;
    const sign = /^\s*=/.exec(text);
    if (sign !== null) {
      const start = sign[0].length;
      const read = parseFormula(text.slice(start), offset => placeOf(start + offset));
      return isProblem(read) ? log.add(read) : read;
    }
    if (text.trim() === '') return log.say({ is: 'empty-text' }, at);
    const node = literal(text, wanted);
    if ('is' in node) return log.say(node, at);
    return { text: cleanText(text), node, at };
  };
}

/** One of a few fixed words. */
export function oneOf<const W extends string>(words: readonly W[]): Reader<W> {
  return (entry, log) => {
    const scalar = asScalar(entry, log, `one of ${words.join(', ')}`);
    if (scalar === undefined) return undefined;
    const { text } = scalar;
    const found = words.find(word => word === text);
    if (found !== undefined) return found;
    return log.say({ is: 'not-one-of', text, near: nearestWord(text, words), words }, entry.at);
  };
}

const FLAG = oneOf(['yes', 'no', 'true', 'false']);

/** `yes` or `no`. */
export const flagOf: Reader<boolean> = (entry, log) => {
  const word = FLAG(entry, log);
  return word === undefined ? undefined : word === 'yes' || word === 'true';
};

/** A name that refers to something else in the recipe. */
export function idOf(style: IdStyle): Reader<string> {
  return (entry, log) => {
    const scalar = asScalar(entry, log, 'a name');
    return scalar === undefined ? undefined : idText(scalar.text, scalar.at, { log, style });
  };
}

const PATH = /^[a-z][a-z0-9_]*(?:\.[a-z][a-z0-9_]*)*$/;

/** `post`, or `end_panel.post` for the post of the use `end_panel`. */
export const selectorOf: Reader<Selector> = (entry, log) => {
  const scalar = asScalar(entry, log, 'the name of a part');
  if (scalar === undefined) return undefined;
  const { text, at } = scalar;
  if (text.length > 200 || !PATH.test(text)) {
    return log.say({ is: 'bad-id', id: text, hyphens: false }, at);
  }
  return { path: text, at };
};

/** The same without its place. */
export const pathOf: Reader<string> = (entry, log) => selectorOf(entry, log)?.path;

const LENGTH = formulaOf('length');

/** Three lengths, along x, y and z. */
export const tripleOf: Reader<Triple> = (entry, log) => {
  if (entry.kind !== 'list' || entry.items.length !== 3) {
    const wanted = 'three lengths in brackets, for x, y and z';
    const got = entry.kind === 'list' ? `a list of ${entry.items.length}` : shapeOf(entry);
    return log.say({ is: 'wrong-shape', wanted, got }, entry.at);
  }
  const [x, y, z] = entry.items.map(item => LENGTH(item, log));
  return x === undefined || y === undefined || z === undefined ? undefined : [x, y, z];
};
