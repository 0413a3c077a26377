import { checkFormula } from '../check-dimensions.js';
import type { Problem } from '../problem.js';
import type { Recipe } from '../recipe.js';
import { assemblyNames } from './known-names.js';
import { reference } from './references.js';

/** Sections of wood that no yard sells, whichever branch of their formula names them. */
export function checkSections(recipe: Recipe, sections: readonly string[]): readonly Problem[] {
  const names = assemblyNames(recipe, recipe.whole);
  return recipe.boards.flatMap(({ section }) => {
    const { kind } = checkFormula(section, names);
    if (kind?.kind !== 'text' || kind.options === undefined) return [];
    return kind.options.flatMap(name => reference('section', name, sections, section.at));
  });
}

/** Boards whose wide face would look out of their own end, and stacks that would stand on end. */
export function checkAxes(recipe: Recipe): readonly Problem[] {
  return [recipe.whole, ...recipe.assemblies].flatMap(({ parts, stacks }) => [
    ...parts
      .filter(({ runs, face }) => runs === face)
      .map(({ at }): Problem => ({ kind: { is: 'two-axes' }, at })),
    ...stacks
      .filter(({ runs }) => runs === 'z')
      .map(({ at }): Problem => ({ kind: { is: 'stack-on-end' }, at })),
  ]);
}
