import { nearestWord } from '../../measure/suggest.js';
import type { Wanted } from '../literal.js';
import type { Option, Question, QuestionGroup, QuestionKind } from '../recipe.js';
import { STANDARD_IDS, standardQuestion } from '../standard-questions.js';
import type { Entry, MapEntry, Pair } from './entry.js';
import { idText, named } from './ids.js';
import type { Log } from './log.js';
import {
  allRead,
  asMap,
  grouped,
  listed,
  needed,
  optional,
  pickWords,
  present,
  refuseUnknown,
} from './reader.js';
import { formulaOf, idOf, oneOf, textOf } from './scalars.js';

const MOST_GROUPS = 30;
const MOST_QUESTIONS = 60;
const MOST_OPTIONS = 60;
const MOST_FIELDS = 6;

/** What stands behind usual, from and to of a question of this kind. */
const WANTED: Readonly<Record<QuestionKind, Wanted>> = {
  length: 'length',
  count: 'number',
  hours: 'number',
  clock: 'text',
  date: 'text',
  days: 'text',
  choice: 'text',
  yes: 'flag',
  text: 'text',
  items: 'text',
  offers: 'text',
  boards: 'text',
};

const KINDS = Object.keys(WANTED) as QuestionKind[];

const OPTION = grouped('an option', { say: needed(textOf), why: optional(textOf) });

const OPTIONS = named({ what: 'options', read: OPTION, most: MOST_OPTIONS, style: 'hyphens' });
const FIELDS = listed(idOf('name'), MOST_FIELDS);
const RANGED: readonly QuestionKind[] = ['length', 'count', 'hours'];

function questionWords(kind: QuestionKind) {
  const value = formulaOf(WANTED[kind]);
  const ranged = RANGED.includes(kind);
  return {
    kind: needed(oneOf(KINDS)),
    say: needed(textOf),
    why: optional(textOf),
    when: optional(formulaOf('flag')),
    usual: { read: value, needed: ranged || ['choice', 'clock', 'days'].includes(kind) },
    from: { read: value, needed: ranged },
    to: { read: value, needed: ranged },
    options: { read: OPTIONS, needed: kind === 'choice' },
    fields: { read: FIELDS, needed: kind === 'items' },
  };
}

/** Words that stand only in some kinds of question. */
const ONLY_IN: Readonly<Record<string, readonly QuestionKind[]>> = {
  from: RANGED,
  to: RANGED,
  options: ['choice'],
  fields: ['items'],
};

function allowedWords(words: object, kind: QuestionKind): readonly string[] {
  return Object.keys(words).filter(word => ONLY_IN[word]?.includes(kind) ?? true);
}

/** Reads `ask`: groups of questions in their order. */
export function questionGroups(entry: Entry, log: Log): readonly QuestionGroup[] | undefined {
  const map = asMap(entry, log, 'groups of questions');
  if (map === undefined) return undefined;
  if (map.pairs.length > MOST_GROUPS) {
    const count = map.pairs.length;
    return log.say({ is: 'too-many', what: 'groups', count, most: MOST_GROUPS }, map.at);
  }
  return allRead(map.pairs.map(pair => group(pair, log)));
}

function group({ key, at, value }: Pair, log: Log): QuestionGroup | undefined {
  const id = idText(key, at, { log, style: 'name' });
  const map = asMap(value, log, 'a group of questions');
  if (map === undefined || id === undefined) return undefined;
  const head = pickWords(map, { what: 'a group', words: { title: needed(textOf) }, log });
  const pairs = map.pairs.filter(pair => pair.key !== 'title');
  if (pairs.length > MOST_QUESTIONS) {
    const facts = { what: 'questions in a group', count: pairs.length, most: MOST_QUESTIONS };
    return log.say({ is: 'too-many', ...facts }, map.at);
  }
  const questions = allRead(pairs.map(pair => question(pair, log)));
  if (head === undefined || questions === undefined) return undefined;
  return { id, title: head.title, questions };
}

function question({ key, at, value }: Pair, log: Log): Question | undefined {
  const id = idText(key, at, { log, style: 'name' });
  if (value.kind === 'scalar' && value.text === 'standard') return standard(key, value, log);
  const map = asMap(value, log, 'a question');
  if (map === undefined) return undefined;
  const kind = kindOf(map, log);
  if (kind === undefined) return undefined;
  const words = questionWords(kind);
  refuseUnknown(map, allowedWords(words, kind), log);
  const read = pickWords(map, { what: `a question of kind ${kind}`, words, log });
  if (read === undefined || id === undefined) return undefined;
  const { why = '', options = [], fields = [], ...rest } = read;
  const choices: Option[] = options.map(option => ({
    id: option.id,
    say: option.value.say,
    why: option.value.why ?? '',
  }));
  return { id, ...present(rest), why, options: choices, fields, at };
}

function kindOf(map: MapEntry, log: Log): QuestionKind | undefined {
  const read = pickWords(map, {
    what: 'a question',
    words: { kind: needed(oneOf(KINDS)) },
    log,
  });
  return read?.kind;
}

function standard(id: string, { at }: Entry, log: Log): Question | undefined {
  const found = standardQuestion(id, at);
  if (found !== undefined) return found;
  const near = nearestWord(id, STANDARD_IDS);
  return log.say({ is: 'not-one-of', text: id, near, words: STANDARD_IDS }, at);
}
