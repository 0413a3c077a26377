import { problemLine } from '../recipe/problem-words.js';
import { readRecipe } from '../recipe/read.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Library } from './library.js';
import { EXIT, failed, type Outcome } from './outcome.js';

export type LoadedRecipe =
  | { readonly ok: true; readonly recipe: Recipe; readonly file: string }
  | { readonly ok: false; readonly outcome: Outcome };

/** A recipe by name or path, read; else what to tell and how to end. */
export function loadRecipe(library: Library, rest: readonly string[]): LoadedRecipe {
  const [name] = rest;
  if (name === undefined) {
    return stop(['Which recipe? Name one: see notchbook recipes.'], EXIT.usage);
  }
  const found = library.find(name);
  if (!found.ok) return stop([found.problem], EXIT.files);
  const read = readRecipe(found.text);
  if (!read.ok) {
    return stop(
      read.problems.map(problem => problemLine(problem, found.file)),
      EXIT.problems,
    );
  }
  return { ok: true, recipe: read.recipe, file: found.file };
}

function stop(lines: readonly string[], code: number): LoadedRecipe {
  return { ok: false, outcome: failed(lines, code) };
}
