import { formatDayAndYear } from '../../measure/calendar.js';
import { formatClock } from '../../measure/clock.js';
import { formatLengthExact } from '../../measure/format-length.js';
import { formatNumber } from '../../measure/format-number.js';
import type { Display } from '../../measure/quantities.js';
import type { Question } from '../recipe.js';
import type { Answer } from '../values.js';
import { offersText, onHandText } from './boards-answer.js';
import { daysText } from './days-answer.js';
import { itemsText } from './items-answer.js';
import { NONE } from './split-list.js';

/** An answer as a person would type it: "48 in", "Roof terrace", "11-1/2 in x 10-3/4 in", "none". */
export function answerText(question: Question, answer: Answer, display: Display): string {
  switch (answer.kind) {
    case 'length':
      return formatLengthExact(answer.value, display);
    case 'count':
      return formatNumber(answer.value, 0);
    case 'hours':
      return `${formatNumber(answer.value, 2)} h`;
    case 'clock':
      return formatClock(answer.value);
    case 'date':
      return answer.value === '' ? NONE : formatDayAndYear(answer.value);
    case 'days':
      return daysText(answer.value);
    case 'choice':
      return question.options.find(({ id }) => id === answer.value)?.say ?? answer.value;
    case 'yes':
      return answer.value ? 'yes' : 'no';
    case 'text':
      return answer.value;
    case 'items':
      return itemsText(answer.value, question.fields, display);
    case 'offers':
      return offersText(answer.value, display);
    case 'boards':
      return onHandText(answer.value, display);
  }
}
