import type { Names } from '../check-dimensions.js';
import { kindName } from '../kind-name.js';
import type { Problem } from '../problem.js';
import { questionsOf } from '../questions.js';
import type { Assembly, Recipe } from '../recipe.js';
import { assemblyNames } from './known-names.js';
import { reference } from './references.js';

/** What a step says can be measured has to be a size of the whole or of a use, and a length. */
export function checkMeasures(recipe: Recipe): readonly Problem[] {
  return recipe.steps.flatMap(({ measure }) =>
    measure.flatMap(({ size, at }): readonly Problem[] => {
      const { assembly, name } = whereOf(size, recipe);
      if (assembly === undefined) return reference('size', size, allSizes(recipe), at);
      if (!ownNames(recipe, assembly).includes(name))
        return reference('size', size, allSizes(recipe), at);
      return notALength(size, assemblyNames(recipe, assembly).get(name)).map(kind => ({
        kind,
        at,
      }));
    }),
  );
}

function notALength(
  size: string,
  kind: ReturnType<Names['get']>,
): readonly Extract<Problem['kind'], { readonly is: 'not-measurable' }>[] {
  // A size whose own formula is broken is told where it stands.
  if (kind === undefined || (kind.kind === 'number' && kind.power === 1)) return [];
  return [{ is: 'not-measurable', size, got: kindName(kind) }];
}

/** The assembly that a path of uses ends in, and the name of the size there. */
function whereOf(path: string, recipe: Recipe) {
  const uses = path.split('.');
  const name = uses.pop() ?? '';
  let assembly: Assembly | undefined = recipe.whole;
  for (const use of uses) {
    const placed: Assembly['places'][number] | undefined = assembly?.places.find(
      ({ id }) => id === use,
    );
    assembly = recipe.assemblies.find(({ id }) => id === placed?.assembly);
  }
  return { assembly, name };
}

/** An answer is a size of the whole; inside a use its name would be the same answer again. */
function ownNames(recipe: Recipe, assembly: Assembly): readonly string[] {
  const answers = assembly === recipe.whole ? answersOf(recipe) : [];
  return [...assembly.sizes, ...assembly.takes, ...answers].map(({ id }) => id);
}

function answersOf(recipe: Recipe) {
  return questionsOf(recipe).filter(({ kind }) => kind === 'length');
}

/** For suggestions: the sizes of the whole, and those of the uses in it. */
function allSizes(recipe: Recipe): readonly string[] {
  const { whole, assemblies } = recipe;
  const own = [...whole.sizes, ...answersOf(recipe)].map(({ id }) => id);
  const inside = (path: string, { places }: Assembly, depth: number): readonly string[] =>
    places.flatMap(({ id, assembly }) => {
      const used = assemblies.find(other => other.id === assembly);
      if (used === undefined || depth > MOST_DEEP) return [];
      const names = [...used.takes, ...used.sizes].map(size => `${path}${id}.${size.id}`);
      return [...names, ...inside(`${path}${id}.`, used, depth + 1)];
    });
  return [...own, ...inside('', whole, 0)];
}

const MOST_DEEP = 4;
