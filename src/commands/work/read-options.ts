import { parseArgs } from 'node:util';
import { formatLength } from '../../measure/format-length.js';
import { parseLength } from '../../measure/length.js';
import { type Parsed, parsed, unreadable } from '../../measure/parsed.js';
import type { Display } from '../../measure/quantities.js';
import { nearestWord } from '../../measure/suggest.js';
import { formatTemperature, parseTemperature } from '../../measure/temperature.js';
import { atMost } from '../../measure/tolerance.js';
import { formatWeight, parseWeight } from '../../measure/weight.js';
import type { Given, ReadText, WorkOption, WorkRule } from './rule.js';

export type ReadOptions =
  | { readonly ok: true; readonly given: Given; readonly as: Form }
  | { readonly ok: false; readonly problems: readonly string[] };

/** How the answer is written. */
export type Form = 'text' | 'json' | 'csv';

type Read = number | string | readonly string[] | boolean;
type Raw = string | string[] | boolean | undefined;

/** Reads the options of a rule. Everything that is missing, unknown or out of range is told at once. */
export function readOptions(
  rule: WorkRule,
  words: readonly string[],
  surroundings: { readonly display: Display; readonly textOf: ReadText },
): ReadOptions {
  const { display } = surroundings;
  const known = [...rule.options.map(option => option.name), 'as', 'units', 'ascii'];
  const unknown = words.filter(word => word.startsWith('--') && !known.includes(bare(word)));
  if (unknown.length > 0)
    return { ok: false, problems: unknown.map(word => unknownWords(word, known, rule)) };
  let values: Readonly<Record<string, Raw>>;
  try {
    values = rawValues(rule, words);
  } catch (error) {
    const message = error instanceof Error ? (error.message.split('. ')[0] ?? '') : String(error);
    return { ok: false, problems: [`${message}. For example: ${rule.example}`] };
  }
  const found = new Map<string, Read>();
  const problems: string[] = [];
  for (const option of rule.options) {
    const read = readOption(option, values[option.name], display);
    if (read === undefined) continue;
    if (read.ok) found.set(option.name, read.value);
    else problems.push(`--${option.name}: ${read.problem} ${read.hint}`.trim());
  }
  const as = formNamed(values.as, rule);
  if (as === undefined)
    problems.push(`--as ${values.as}: it can be ${formsOf(rule).join(' or ')}.`);
  if (problems.length > 0 || as === undefined) return { ok: false, problems };
  return { ok: true, given: givenOf(found, surroundings), as };
}

function formsOf({ csv = false }: WorkRule): readonly Form[] {
  return csv ? ['text', 'json', 'csv'] : ['text', 'json'];
}

function formNamed(name: Raw, rule: WorkRule): Form | undefined {
  return formsOf(rule).find(form => form === (name ?? 'text'));
}

function rawValues(rule: WorkRule, words: readonly string[]) {
  const options = Object.fromEntries(
    rule.options.map(({ name, kind }) => [
      name,
      {
        type: kind === 'flag' ? ('boolean' as const) : ('string' as const),
        multiple: kind === 'words',
      },
    ]),
  );
  return parseArgs({
    args: [...withNegatives(words)],
    options: {
      ...options,
      as: { type: 'string' },
      units: { type: 'string' },
      ascii: { type: 'boolean' },
    },
    strict: true,
  }).values as Readonly<Record<string, Raw>>;
}

/** `--temperature -5C` as `--temperature=-5C`, which would otherwise be taken for an option -5. */
function withNegatives(words: readonly string[]): readonly string[] {
  return words.flatMap((word, i) => {
    const next = words[i + 1];
    if (word.startsWith('--') && !word.includes('=') && next !== undefined && NEGATIVE.test(next))
      return [`${word}=${next}`];
    return i > 0 && NEGATIVE.test(word) && (words[i - 1] ?? '').startsWith('--') ? [] : [word];
  });
}

const NEGATIVE = /^-[\d.,]/;

function readOption(option: WorkOption, raw: Raw, display: Display): Parsed<Read> | undefined {
  if (option.kind === 'flag') return raw === true ? parsed(true) : undefined;
  if (Array.isArray(raw)) return parsed(raw);
  const text = typeof raw === 'string' ? raw : option.usual;
  if (text === undefined) {
    return option.kind === 'words'
      ? undefined
      : unreadable('It has to be given.', `For example --${option.name} ${option.example}.`);
  }
  if (text === '') return undefined;
  return READERS[option.kind](text, option, display);
}

type Reader = (text: string, option: WorkOption, display: Display) => Parsed<Read>;

const READERS: Readonly<Record<Exclude<WorkOption['kind'], 'flag'>, Reader>> = {
  length: (text, option, display) =>
    within(parseLength(text, display.system), option, value => formatLength(value, display)),
  weight: (text, option, display) =>
    within(parseWeight(text, display.system), option, value => formatWeight(value, display)),
  temperature: (text, option, display) =>
    within(parseTemperature(text, display.system), option, value =>
      formatTemperature(value, display),
    ),
  number: (text, option) => within(plainNumber(text, option), option, String),
  count: (text, option) => {
    const read = plainNumber(text, option);
    if (read.ok && !Number.isInteger(read.value)) {
      return unreadable(
        `"${text}" is not a whole number.`,
        `For example --${option.name} ${option.example}.`,
      );
    }
    return within(read, option, String);
  },
  word: (text, option) => oneOf(text, option),
  words: text => parsed([text]),
};

function plainNumber(text: string, { name, example }: WorkOption): Parsed<number> {
  const value = Number(text.trim().replace(/%$/, ''));
  return text.trim() !== '' && Number.isFinite(value)
    ? parsed(value)
    : unreadable(`"${text}" is not a number.`, `For example --${name} ${example}.`);
}

function within(
  read: Parsed<number>,
  option: WorkOption,
  say: (value: number) => string,
): Parsed<Read> {
  if (!read.ok) return read;
  const { least = Number.NEGATIVE_INFINITY, most = Number.POSITIVE_INFINITY } = option;
  if (atMost(least, read.value) && atMost(read.value, most)) return read;
  return unreadable(
    `${say(read.value)} is out of range.`,
    `From ${say(least)} to ${say(most)}, for example --${option.name} ${option.example}.`,
  );
}

function oneOf(text: string, { name, choices, example }: WorkOption): Parsed<Read> {
  if (choices === undefined || choices.includes(text)) return parsed(text);
  const near = nearestWord(text, choices);
  const help = near === undefined ? `It can be ${choices.join(', ')}.` : `Did you mean ${near}?`;
  return unreadable(`"${text}" is not known.`, `${help} For example --${name} ${example}.`);
}

function givenOf(
  found: ReadonlyMap<string, Read>,
  surroundings: { readonly display: Display; readonly textOf: ReadText },
): Given {
  const get = <Kind extends 'number' | 'string'>(name: string, kind: Kind) => {
    const value = found.get(name);
    if (typeof value !== kind)
      throw new Error(`the rule asks for ${name}, which is no ${kind} option`);
    return value;
  };
  return {
    number: name => get(name, 'number') as number,
    word: name => get(name, 'string') as string,
    words: name => {
      const value = found.get(name);
      return Array.isArray(value) ? value : [];
    },
    has: name => found.has(name),
    ...surroundings,
  };
}

function unknownWords(word: string, known: readonly string[], rule: WorkRule): string {
  const near = nearestWord(bare(word), known);
  const help =
    near === undefined
      ? `Options: ${known.map(name => `--${name}`).join(', ')}.`
      : `Did you mean --${near}?`;
  return `work ${rule.name} has no option ${word.split('=')[0]}. ${help}`;
}

function bare(word: string): string {
  return word.replace(/^--/, '').split('=')[0] ?? '';
}
