import { makePlan } from '../plan/make-plan.js';
import { onDay } from '../plan/on-day.js';
import { problemWords } from '../recipe/problem-words.js';
import { readRecipe } from '../recipe/read.js';
import type { Planner } from '../ui/build.js';
import type { Loaded } from '../ui/services.js';
import type { Workbook } from '../workbook/workbook.js';

/** What builds are planned with. */
export const PLANNER: Planner = { plan: makePlan, onDay };

/** Told where the save before stands in for a damaged one. */
export const SAVED_BEFORE =
  'The last save is damaged; this is the save before it. Open the build once to mend that.\n';

/** A second window reads the same build at each key: what is read stays read until it is another text. */
let last: { readonly text: string; readonly read: ReturnType<typeof readRecipe> } | undefined;

/** A build with the recipe it keeps: a newer one in the program must not change it. */
export function withRecipe(workbook: Workbook, notice?: string | undefined): Loaded {
  const { recipeText } = workbook;
  if (last?.text !== recipeText) last = { text: recipeText, read: readRecipe(recipeText) };
  const { read } = last;
  if (read.ok) return { ok: true, workbook, recipe: read.recipe, notice };
  const why = read.problems.map(problem => problemWords(problem).problem).join(' ');
  return { ok: false, problem: `The recipe kept in "${workbook.name}" can't be read: ${why}` };
}
