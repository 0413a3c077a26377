import { readdirSync, readFileSync } from 'node:fs';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import type { Display } from '../../src/measure/quantities.js';
import { makePlan } from '../../src/plan/make-plan.js';
import type { Plan } from '../../src/plan/plan.js';
import { problemLine } from '../../src/recipe/problem-words.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import { readRecipe } from '../../src/recipe/read.js';
import type { Recipe } from '../../src/recipe/recipe.js';
import type { Answers } from '../../src/recipe/values.js';

const PROJECTS = new URL('../../projects/', import.meta.url);

/** Names of all projects that come with the program. */
export const PROJECT_NAMES: readonly string[] = readdirSync(PROJECTS);

/** The text of a project's recipe. */
export function projectText(name: string): string {
  return readFileSync(new URL(`${name}/recipe.yaml`, PROJECTS), 'utf8');
}

/** A project's recipe, read; its problems are the error where it has any. */
export function project(name: string): Recipe {
  const read = readRecipe(projectText(name));
  if (!read.ok) throw new Error(read.problems.map(it => problemLine(it, name)).join('\n'));
  return read.recipe;
}

/** A plan of a project, with some answers in place of the usual ones. */
export function planOf(recipe: Recipe, given: Answers = {}, display: Display = SIXTEENTHS): Plan {
  const made = makePlan(recipe, { ...usualAnswers(recipe), ...given }, display);
  if (!made.ok) throw new Error(made.problems.map(it => problemLine(it, recipe.id)).join('\n'));
  return made.plan;
}
