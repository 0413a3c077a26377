import { SAYING_CHECKS } from './checks/every-check.js';
import { formulaSites } from './checks/formula-sites.js';
import { instances, MOST_USES } from './checks/instances.js';
import type { Known } from './checks/references.js';
import { checkCoverage, checkOrder } from './checks/steps.js';
import { checkUnused } from './checks/unused.js';
import type { Problem } from './problem.js';
import type { Recipe } from './recipe.js';

export type { Known } from './checks/references.js';

/**
 * Everything that is wrong with a recipe that reads well, in the order of the file: unknown names and
 * references, mixed units, circles, ranges, what no step cuts or closes, and steps out of order. What
 * only shows when boards stand in space, clashes for example, is found by setting it out.
 */
export function checkRecipe(recipe: Recipe, known: Known): readonly Problem[] {
  const made = instances(recipe);
  const { inItself, tooMany } = made;
  if (inItself !== undefined) {
    return [{ kind: { is: 'inside-itself', assembly: inItself.id }, at: inItself.at }];
  }
  if (tooMany) {
    const facts = { what: 'parts in all uses', count: made.paths.length, most: MOST_USES };
    return [{ kind: { is: 'too-many', ...facts }, at: recipe.whole.at }];
  }
  const sites = formulaSites(recipe, made, known.words ?? []);
  const view = { recipe, known, made, sites };
  const problems = [
    ...SAYING_CHECKS.flatMap(check => check(view)),
    ...checkUnused(recipe, made, sites),
    ...checkCoverage(recipe, made),
    ...checkOrder(recipe, made),
  ];
  return problems.toSorted((a, b) => a.at.line - b.at.line || a.at.column - b.at.column);
}
