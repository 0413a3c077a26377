import { parseClock } from '../../measure/clock.js';
import { parseDuration } from '../../measure/duration.js';
import { parseLength } from '../../measure/length.js';
import { type Parsed, parsed, quoted, unreadable } from '../../measure/parsed.js';
import type { Display } from '../../measure/quantities.js';
import { cleanText } from '../clean-text.js';
import type { Scope } from '../evaluate.js';
import type { Question } from '../recipe.js';
import type { Answer } from '../values.js';
import { parseOffers, parseOnHand } from './boards-answer.js';
import { parseChoice } from './choice-answer.js';
import { parseDate, parseDays } from './days-answer.js';
import { parseItems } from './items-answer.js';
import { inRange, lengthsSaid, numbersSaid, rangeOf } from './range.js';

const LONGEST = 4000;
const LONGEST_TEXT = 200;

/** How a person's lengths are read, and the answers that the range of a question may look at. */
export type AnswerSetting = { readonly display: Display; readonly scope: Scope };

/**
 * What a person typed as the answer to a question, checked against its range: `20ft` for a seat from
 * 30 in to 84 in is refused with the range. Nothing is taken that would have to be guessed.
 */
export function parseAnswer(
  question: Question,
  text: string,
  setting: AnswerSetting,
): Parsed<Answer> {
  if (text.length > LONGEST) {
    return unreadable('This answer is too long.', `Keep it under ${LONGEST} characters.`);
  }
  return READERS[question.kind](text, question, setting);
}

type AnswerReader = (text: string, question: Question, setting: AnswerSetting) => Parsed<Answer>;

const READERS: Readonly<Record<Question['kind'], AnswerReader>> = {
  length: (text, question, { display, scope }) => {
    const read = parseLength(text, display.system);
    const value = read.ok
      ? inRange(read.value, rangeOf(question, scope), lengthsSaid(display))
      : read;
    return answered(value, length => ({ kind: 'length', value: length }));
  },
  count: (text, question, { scope }) => {
    const read = wholeNumber(text);
    const value = read.ok ? inRange(read.value, rangeOf(question, scope), numbersSaid('')) : read;
    return answered(value, count => ({ kind: 'count', value: count }));
  },
  hours: (text, question, { scope }) => {
    const read = hours(text);
    const value = read.ok ? inRange(read.value, rangeOf(question, scope), numbersSaid(' h')) : read;
    return answered(value, count => ({ kind: 'hours', value: count }));
  },
  clock: text => answered(parseClock(text), value => ({ kind: 'clock', value })),
  date: text => answered(parseDate(text), value => ({ kind: 'date', value })),
  days: text => answered(parseDays(text), value => ({ kind: 'days', value })),
  choice: (text, { options }) =>
    answered(parseChoice(text, options), value => ({ kind: 'choice', value })),
  yes: text => answered(yesOrNo(text), value => ({ kind: 'yes', value })),
  text: text => answered(shortText(text), value => ({ kind: 'text', value })),
  items: (text, { fields }, { display }) =>
    answered(parseItems(text, fields, display.system), value => ({ kind: 'items', value })),
  offers: text => answered(parseOffers(text), value => ({ kind: 'offers', value })),
  boards: text => answered(parseOnHand(text), value => ({ kind: 'boards', value })),
};

function answered<T>(read: Parsed<T>, answer: (value: T) => Answer): Parsed<Answer> {
  return read.ok ? parsed(answer(read.value)) : read;
}

function wholeNumber(text: string): Parsed<number> {
  if (/^\s*\d{1,9}\s*$/.test(text)) return parsed(Number(text));
  return unreadable(`${quoted(text)} is not a whole number.`, 'Write a number such as 2.');
}

/** A bare number is hours here: the question asks for hours. */
function hours(text: string): Parsed<number> {
  const bare = text.trim().replace(',', '.');
  if (/^\d{1,4}(?:\.\d+)?$/.test(bare)) return parsed(Number(bare));
  const minutes = parseDuration(text);
  return minutes.ok ? parsed(minutes.value / 60) : minutes;
}

function yesOrNo(text: string): Parsed<boolean> {
  if (/^\s*(?:y|yes|true)\s*$/i.test(text)) return parsed(true);
  if (/^\s*(?:n|no|false)\s*$/i.test(text)) return parsed(false);
  return unreadable(`${quoted(text)} is not yes or no.`, 'Write yes or no.');
}

function shortText(text: string): Parsed<string> {
  const clean = cleanText(text);
  if (clean.length <= LONGEST_TEXT) return parsed(clean);
  return unreadable(
    `This text has ${clean.length} characters.`,
    `Say it in ${LONGEST_TEXT} characters.`,
  );
}
