import { type CalendarDay, formatDayAndYear } from '../measure/calendar.js';
import type { Answer, Answers } from '../recipe/values.js';
import { listWords } from '../text/list.js';

/** Days of an answer that are over, in words; empty where none is. They are taken as they are: a build may have begun then. */
export function pastDays(answer: Answer, today: CalendarDay): string {
  const named = daysIn(answer).filter(day => day < today);
  if (named.length === 0) return '';
  const past = `${listWords(named.map(formatDayAndYear))} ${named.length === 1 ? 'is' : 'are'} past: today is ${formatDayAndYear(today)}.`;
  return `${past} Right for work that began then; for work to come write a day to come.`;
}

/** The same for all answers together. */
export function allPastDays(answers: Answers, today: CalendarDay): readonly string[] {
  return Object.entries(answers).flatMap(([id, answer]) => {
    const words = pastDays(answer, today);
    return words === '' ? [] : [`${id}: ${words}`];
  });
}

function daysIn(answer: Answer): readonly CalendarDay[] {
  if (answer.kind === 'date') return answer.value === '' ? [] : [answer.value];
  if (answer.kind !== 'days') return [];
  return answer.value.map(({ on }) => on).filter(on => /^\d/.test(on));
}
