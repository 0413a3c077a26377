import { checkPiece } from '../plan/check-piece.js';
import { problemLine } from '../recipe/problem-words.js';
import { count } from '../text/plural.js';
import type { Arguments } from './arguments.js';
import type { Library } from './library.js';
import { loadRecipe } from './load-recipe.js';
import { EXIT, fine, type Outcome } from './outcome.js';

/** `notchbook check FILE`: every problem of a recipe with its place; 1 when there is one. */
export function checkCommand({ rest }: Arguments, library: Library): Outcome {
  const loaded = loadRecipe(library, rest);
  if (!loaded.ok) return loaded.outcome;
  const problems = checkPiece(loaded.recipe);
  if (problems.length === 0) return fine(`${loaded.file}: no problems found\n`);
  const lines = problems.map(problem => problemLine(problem, loaded.file));
  return {
    out: '',
    err: `${[...lines, count(problems.length, 'problem')].join('\n')}\n`,
    code: EXIT.problems,
  };
}
