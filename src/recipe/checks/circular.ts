import type { Formula } from '../formula.js';
import { formulaNames } from '../formula-names.js';
import type { Place } from '../place.js';
import type { Problem } from '../problem.js';
import type { Assembly, LayoutRule, Recipe } from '../recipe.js';

/** Something with a name that waits for other names. */
type Waiting = { readonly for: readonly string[]; readonly at: Place };

/** Sizes, boards and layouts that wait for each other: each circle once, where it starts. */
export function checkCircles(recipe: Recipe): readonly Problem[] {
  return [recipe.whole, ...recipe.assemblies].flatMap(assembly => circlesIn(recipe, assembly));
}

function circlesIn(recipe: Recipe, assembly: Assembly): readonly Problem[] {
  const all = waitingIn(recipe, assembly);
  const done = new Set<string>();
  const problems: Problem[] = [];
  const follow = (id: string, around: readonly string[]): void => {
    const waiting = all.get(id);
    if (waiting === undefined) return;
    const start = around.indexOf(id);
    if (start >= 0) {
      problems.push({ kind: { is: 'circular', names: around.slice(start) }, at: waiting.at });
    }
    if (start >= 0 || done.has(id)) return;
    for (const name of waiting.for) follow(name, [...around, id]);
    done.add(id);
  };
  for (const id of all.keys()) follow(id, []);
  return problems;
}

function waitingIn(recipe: Recipe, assembly: Assembly): ReadonlyMap<string, Waiting> {
  const all = new Map<string, Waiting>();
  for (const { id, formula, at } of assembly.sizes) all.set(id, { for: namesIn(formula), at });
  for (const layout of assembly.layouts) {
    const waiting = { for: layoutNeeds(assembly, layout), at: layout.at };
    all.set(`${layout.id}.count`, waiting).set(`${layout.id}.gap`, waiting);
  }
  if (assembly !== recipe.whole) return all;
  for (const { id, section, at } of recipe.boards) {
    const waiting = { for: namesIn(section), at };
    all.set(`${id}.width`, waiting).set(`${id}.thickness`, waiting);
  }
  return all;
}

/** A layout waits for its own sizes and for how wide the part is that it spreads. */
function layoutNeeds({ parts }: Assembly, layout: LayoutRule): readonly string[] {
  const { from, over, want, least, most, along } = layout;
  const own = [from, over, want, least, most].flatMap(namesIn);
  const part = parts.find(({ id }) => id === layout.spread);
  if (part === undefined) return own;
  const piece = along === part.runs ? namesIn(part.length) : [`${part.board}.width`];
  return [...own, ...piece];
}

function namesIn({ node }: Formula): readonly string[] {
  return formulaNames(node).map(({ name }) => name);
}
