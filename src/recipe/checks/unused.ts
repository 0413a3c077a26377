import { formulaNames } from '../formula-names.js';
import type { Place } from '../place.js';
import type { Problem, Target } from '../problem.js';
import type { Assembly, Recipe } from '../recipe.js';
import type { Site } from './formula-sites.js';
import type { Instances } from './instances.js';

/** Named sizes, kinds of board, layouts and assemblies that nothing uses. */
export function checkUnused(
  recipe: Recipe,
  made: Instances,
  sites: readonly Site[],
): readonly Problem[] {
  const names = new Set(
    sites.flatMap(({ formula }) => formulaNames(formula.node).map(({ name }) => name)),
  );
  const all = [recipe.whole, ...recipe.assemblies];
  const boards = new Set(
    all.flatMap(({ parts, stacks }) => [
      ...parts.map(({ board }) => board),
      ...stacks.flatMap(stack => stack.boards),
    ]),
  );
  return [
    ...all.flatMap(({ sizes }) => unused('size', sizes, id => names.has(id))),
    ...unused('board', recipe.boards, id => boards.has(id) || isMeasured(id, names)),
    ...unused('assembly', recipe.assemblies, id => made.used.has(id)),
    ...all.flatMap(unusedLayouts),
  ];
}

function isMeasured(board: string, names: ReadonlySet<string>): boolean {
  return names.has(`${board}.width`) || names.has(`${board}.thickness`);
}

function unusedLayouts({ parts, layouts }: Assembly): readonly Problem[] {
  const used = parts.map(({ repeat }) => (repeat?.kind === 'layout' ? repeat.layout : ''));
  return unused('layout', layouts, id => used.includes(id));
}

type Placed = { readonly id: string; readonly at: Place };

function unused(
  target: Target,
  all: readonly Placed[],
  isUsed: (id: string) => boolean,
): readonly Problem[] {
  return all
    .filter(({ id }) => !isUsed(id))
    .map(({ id, at }) => ({ kind: { is: 'unused', target, name: id }, at }));
}
