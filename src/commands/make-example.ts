import type { Display } from '../measure/quantities.js';
import { makePlan } from '../plan/make-plan.js';
import { usualAnswers } from '../recipe/questions.js';
import { exampleEvents } from '../workbook/example.js';
import { startWorkbook } from '../workbook/start-workbook.js';
import type { Workbook } from '../workbook/workbook.js';
import type { KeptRecipe } from './shelf-services.js';

/** The build that shows how this works: usual answers, half-way through its second evening. */
export function makeExample(
  { recipe, text }: KeptRecipe,
  display: Display,
  nowMs: number,
): Workbook {
  const answers = usualAnswers(recipe);
  const workbook = startWorkbook({
    id: 'example',
    name: `Example: ${recipe.title}`,
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
