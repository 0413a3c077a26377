import { MILLIMETERS, SIXTEENTHS } from '../../../measure/displays.js';
import { formatLengthExact } from '../../../measure/format-length.js';
import { pastDays } from '../../../plan/past-days.js';
import { lengthsSaid, numbersSaid, rangeOf } from '../../../recipe/answers/range.js';
import { usualAnswer } from '../../../recipe/answers/usual-answer.js';
import { answerScope, answerText } from '../../../recipe/questions.js';
import type { Question } from '../../../recipe/recipe.js';
import type { Answer, Item } from '../../../recipe/values.js';
import { count } from '../../../text/plural.js';
import { calendarDay } from '../../../workbook/clock-words.js';
import type { InterviewState } from './state.js';

/** What may be answered: "From 30 in to 7 ft (84 in). Usual: 48 in." */
export function limitWords(question: Question, state: InterviewState): string {
  const { recipe, answers, display } = state;
  const scope = answerScope(recipe, answers);
  const { from, to } = rangeOf(question, scope);
  const said = question.kind === 'length' ? lengthsSaid(display) : numbersSaid('');
  const range =
    from === undefined || to === undefined ? '' : `From ${said.limit(from)} to ${said.limit(to)}. `;
  const usual = answerText(question, usualAnswer(question, scope), display);
  return usual === '' ? range.trim() : `${range}Usual: ${usual}.`;
}

/** How a list is typed, on one line; empty for everything else. */
export function formWords({ kind, fields }: Question): string {
  switch (kind) {
    case 'items':
      return `Write ${fields.join(' x ')} of each, commas between: ${example(fields.length)}. Or: none.`;
    case 'offers':
      return 'Write section, length @ price, commas between: 2x4 8 ft @ 7.48, 1x3 8 ft @ 3.98. The price may be left out. None: all usual store lengths count.';
    case 'boards':
      return 'Write section, length *how many, commas between: 2x4 52 in *2, 1x3 6 ft. Or: none.';
    case 'clock':
      return 'Write it such as 18:00 or 6 pm.';
    case 'date':
      return 'Write it such as 2026-12-04 or Dec 4 2026. Or: none.';
    case 'days':
      return 'Write such as every day, weekdays, Tue Thu, or with hours of their own: Tue Thu, Sat 9:00-16:00. Single days too: 2026-12-04.';
    default:
      return '';
  }
}

function example(fields: number): string {
  const one = ['11 in', '10 in', '9 in', '8 in'].slice(0, fields).join(' x ');
  const other = ['9 in', '10 in', '8 in', '7 in'].slice(0, fields).join(' x ');
  return `${one}, ${other}`;
}

/**
 * How the answer was understood, where it could have been otherwise: "48 in, that is 1219 mm"; "1 in
 * the list: height 11-1/2 in, diameter 10-3/4 in", since two sizes are easily given the wrong way round.
 */
export function readWords({ fields }: Question, answer: Answer): string {
  switch (answer.kind) {
    case 'length': {
      const inch = formatLengthExact(answer.value, SIXTEENTHS);
      return `${inch}, that is ${formatLengthExact(Math.round(answer.value), MILLIMETERS)}`;
    }
    case 'items':
      return itemWords(fields, answer.value);
    case 'offers':
      return answer.value.length === 0 ? 'no prices' : count(answer.value.length, 'board on offer');
    case 'boards': {
      const boards = answer.value.reduce((sum, board) => sum + board.count, 0);
      return boards === 0 ? 'none' : `${count(boards, 'board')} to use up first`;
    }
    default:
      return '';
  }
}

/** How many, and the last of them field by field: it is the one just typed. */
function itemWords(fields: readonly string[], items: readonly Item[]): string {
  const last = items.at(-1);
  if (last === undefined) return 'none';
  const sizes = fields.map(field => `${field} ${formatLengthExact(last[field] ?? 0, SIXTEENTHS)}`);
  const which = items.length === 1 ? '' : ', the last';
  return `${items.length} in the list${which}: ${sizes.join(', ')}`;
}

/** A day that is over is told at once, and taken; empty for all other answers. */
export function pastWords(answer: Answer, nowMs: number): string {
  const past = pastDays(answer, calendarDay(nowMs));
  return past === '' ? '' : `! ${past}`;
}
