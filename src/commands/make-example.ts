import type { Display } from '../measure/quantities.js';
import { makePlan } from '../plan/make-plan.js';
import { usualAnswers } from '../recipe/questions.js';
import type { Answers } from '../recipe/values.js';
import { exampleEvents } from '../workbook/example.js';
import { startWorkbook } from '../workbook/start-workbook.js';
import type { Workbook } from '../workbook/workbook.js';
import type { KeptRecipe } from './shelf-services.js';

/** Invented for the example: three long evenings in a shared garage. */
const EVENING_HOURS = 5;

/**
 * The build that shows how this works: a bench for the roof terrace of a housing co-op, half-way through
 * its second evening.
 */
export function makeExample(
  { recipe, text }: KeptRecipe,
  display: Display,
  nowMs: number,
): Workbook {
  const answers: Answers = {
    ...usualAnswers(recipe),
    session_hours: { kind: 'hours', value: EVENING_HOURS },
  };
  const workbook = startWorkbook({
    id: 'example',
    name: 'Example: co-op roof terrace',
    recipe: recipe.id,
    recipeText: text,
    display,
    answers,
    example: true,
    nowMs,
  });
  const made = makePlan(recipe, answers, display);
  return made.ok ? { ...workbook, events: exampleEvents(made.plan, nowMs) } : workbook;
}
