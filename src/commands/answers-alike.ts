import { answerScope, answerText, parseAnswer, questionsOf } from '../recipe/questions.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Answer, Answers } from '../recipe/values.js';
import type { Workbook } from '../workbook/workbook.js';

/**
 * Answers of an earlier build as the beginning of the next one. The recipe may ask differently by now:
 * what it no longer takes is left out, and the interview asks for it.
 */
export function answersAlike({ answers, display }: Workbook, recipe: Recipe): Answers {
  const kept: Record<string, Answer> = {};
  for (const question of questionsOf(recipe)) {
    const before = answers[question.id];
    if (before?.kind !== question.kind) continue;
    const text = answerText(question, before, display);
    const read = parseAnswer(question, text, { display, scope: answerScope(recipe, kept) });
    if (read.ok) kept[question.id] = read.value;
  }
  return kept;
}
