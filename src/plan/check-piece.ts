import { CAUTIONS } from '../materials/cautions.js';
import { sectionNames } from '../materials/section.js';
import { TOOLS } from '../materials/tools.js';
import { setOut } from '../model/setout.js';
import { checkRecipe } from '../recipe/check-recipe.js';
import type { Problem } from '../recipe/problem.js';
import { rangeCorners } from '../recipe/range-corners.js';
import type { Recipe } from '../recipe/recipe.js';
import { PLAN_WORDS } from './plan-scope.js';

/** More problems of the boards in space than this only repeat each other. */
const ENOUGH = 20;

/**
 * All that is wrong with a recipe: what it says, and, when that is right, what shows only when the boards
 * stand in space, at both ends of every range and at all pairs of ends. Each problem once.
 */
export function checkPiece(recipe: Recipe): readonly Problem[] {
  const said = checkRecipe(recipe, {
    tools: TOOLS.map(tool => tool.id),
    cautions: Object.keys(CAUTIONS),
    sections: sectionNames(),
    words: PLAN_WORDS,
  });
  return said.length > 0 ? said : standing(recipe);
}

function standing(recipe: Recipe): readonly Problem[] {
  const found = new Map<string, Problem>();
  for (const answers of rangeCorners(recipe)) {
    const out = setOut(recipe, answers);
    if (out.ok) continue;
    for (const problem of out.problems) {
      const key = `${problem.at.line}:${problem.at.column}:${problem.kind.is}`;
      if (!found.has(key)) found.set(key, problem);
    }
    if (found.size >= ENOUGH) break;
  }
  return [...found.values()];
}
