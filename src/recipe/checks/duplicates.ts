import type { Place } from '../place.js';
import type { Problem } from '../problem.js';
import { questionsOf } from '../questions.js';
import type { Assembly, Recipe } from '../recipe.js';

type Placed = { readonly id: string; readonly at: Place };

/**
 * Names that stand for two things at once: two questions, a question and a named size, a part and a use
 * with one path, two steps.
 */
export function checkDuplicates(recipe: Recipe): readonly Problem[] {
  const questions = questionsOf(recipe);
  const timers = recipe.steps.map(({ timers: all, at }) => all.map(({ id }) => ({ id, at })));
  return [
    ...repeated([...questions, ...recipe.whole.sizes]),
    ...recipe.assemblies.flatMap(assembly => insideAssembly(assembly, questions)),
    ...[recipe.whole, ...recipe.assemblies].flatMap(({ parts, stacks, places }) =>
      repeated([...parts, ...stacks, ...places]),
    ),
    ...repeated([...recipe.whole.parts, ...recipe.whole.layouts]),
    ...repeated(recipe.steps),
    ...timers.flatMap(repeated),
  ];
}

/** A size of an assembly may not hide an answer, nor a size that it takes. */
function insideAssembly(
  { takes, sizes }: Assembly,
  questions: readonly Placed[],
): readonly Problem[] {
  return repeated([...questions, ...takes, ...sizes]).filter(
    ({ at }) => !questions.some(question => question.at === at),
  );
}

function repeated(all: readonly Placed[]): readonly Problem[] {
  const lines = new Map<string, number>();
  return all.flatMap(({ id, at }): readonly Problem[] => {
    const firstLine = lines.get(id);
    if (firstLine === undefined) {
      lines.set(id, at.line);
      return [];
    }
    return [{ kind: { is: 'duplicate-id', id, firstLine }, at }];
  });
}
