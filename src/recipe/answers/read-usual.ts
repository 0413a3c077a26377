import { parseDay } from '../../measure/calendar.js';
import { parseClock } from '../../measure/clock.js';
import type { Parsed } from '../../measure/parsed.js';
import type { Question } from '../recipe.js';
import { parseOffers, parseOnHand } from './boards-answer.js';
import { parseChoice } from './choice-answer.js';
import { parseDays } from './days-answer.js';
import { parseItems } from './items-answer.js';

type UsualReader = (text: string, of: Pick<Question, 'options' | 'fields'>) => Parsed<unknown>;

const READERS: Partial<Record<Question['kind'], UsualReader>> = {
  choice: (text, { options }) => parseChoice(text, options),
  items: (text, { fields }) => parseItems(text, fields, 'inch'),
  offers: parseOffers,
  boards: parseOnHand,
  clock: parseClock,
  date: parseDay,
  days: parseDays,
};

/** How the usual answer of a question reads that is written as it would be typed; undefined for other kinds. */
export function readUsual(question: Question, text: string): Parsed<unknown> | undefined {
  return READERS[question.kind]?.(text, question);
}
