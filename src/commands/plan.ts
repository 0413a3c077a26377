import type { CalendarDay } from '../measure/calendar.js';
import { makePlan } from '../plan/make-plan.js';
import { allPastDays } from '../plan/past-days.js';
import type { Plan } from '../plan/plan.js';
import { planCsv } from '../print/plan-csv.js';
import { planJson } from '../print/plan-json.js';
import { planMarkdown, planText } from '../print/plan-text.js';
import type { Problem } from '../recipe/problem.js';
import { problemWords } from '../recipe/problem-words.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import type { Arguments } from './arguments.js';
import type { Library } from './library.js';
import { loadRecipe } from './load-recipe.js';
import { EXIT, failed, fine, type Outcome } from './outcome.js';
import { setAnswers } from './set-answers.js';
import { setMeasured } from './set-measured.js';

export type Worked =
  | { readonly ok: true; readonly plan: Plan; readonly recipe: Recipe; readonly answers: Answers }
  | { readonly ok: false; readonly outcome: Outcome };

/**
 * `notchbook plan RECIPE`: the whole job worked out and printed in the form that was asked for. Days that are over are
 * told beside it.
 */
export function planCommand(given: Arguments, library: Library, today: CalendarDay): Outcome {
  const worked = workOut(given, library, given.rest);
  if (!worked.ok) return worked.outcome;
  const past = allPastDays(worked.answers, today);
  return { ...fine(printed(worked.plan, given)), err: past.map(line => `${line}\n`).join('') };
}

function printed(plan: Plan, { as, table, width }: Arguments): string {
  if (as === 'json') return planJson(plan);
  if (as === 'csv') return planCsv(plan, table);
  return as === 'markdown' ? planMarkdown(plan) : planText(plan, width);
}

/** The plan of a recipe with the answers of the command line. */
export function workOut(given: Arguments, library: Library, rest: readonly string[]): Worked {
  const loaded = loadRecipe(library, rest);
  if (!loaded.ok) return loaded;
  const { recipe } = loaded;
  const set = setAnswers(recipe, given.sets, given.display);
  if (!set.ok) return { ok: false, outcome: failed(set.problems, EXIT.usage) };
  const planned = makePlan(recipe, set.answers, given.display);
  const measured = planned.ok ? setMeasured(given.measured, planned.plan) : undefined;
  if (measured?.ok === false) {
    return { ok: false, outcome: failed(measured.problems, EXIT.usage) };
  }
  const made =
    measured === undefined || measured.measured.size === 0
      ? planned
      : makePlan(recipe, set.answers, given.display, { ...measured, cut: [], isBought: false });
  if (!made.ok) return { ok: false, outcome: cannotStand(made.problems) };
  return { ok: true, plan: made.plan, recipe, answers: set.answers };
}

/** What to tell about a piece that can't be set out. */
export function cannotStand(problems: readonly Problem[]): Outcome {
  const lines = problems.map(problem => {
    const { problem: wrong, hint } = problemWords(problem);
    return `${wrong} ${hint}`.trim();
  });
  return failed(['With these answers the piece cannot be set out:', ...lines], EXIT.usage);
}
