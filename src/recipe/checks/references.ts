import { nearestWord } from '../../measure/suggest.js';
import type { Place } from '../place.js';
import type { Problem, Target } from '../problem.js';
import { questionsOf } from '../questions.js';
import type { Assembly, PlacedAssembly, Recipe, Selector } from '../recipe.js';
import { type Instances, means } from './instances.js';

/** What the program knows beside the recipe: ids of tools and cautions, trade names of sections. */
export type Known = {
  readonly tools: readonly string[];
  readonly cautions: readonly string[];
  readonly sections: readonly string[];
  /** Names that step texts may use beside those of the recipe, such as `glue.open`. */
  readonly words?: readonly string[];
};

/** Boards, layouts, assemblies, parts, joints and notches that something refers to and nobody made. */
export function checkReferences(recipe: Recipe, made: Instances): readonly Problem[] {
  const inside = [recipe.whole, ...recipe.assemblies].flatMap(assembly => [
    ...boardReferences(recipe, assembly),
    ...layoutReferences(assembly),
    ...assembly.stacks.flatMap(({ each, at }) => listReference(recipe, each, at)),
    ...assembly.places.flatMap(use => useReferences(recipe, use)),
    ...selectorReferences(recipe, assembly),
  ]);
  return [...inside, ...holdReferences(recipe, made), ...stepReferences(recipe, made)];
}

/** The problem that nothing of this name exists, or nothing when it does. */
export function reference(
  target: Target,
  name: string,
  known: readonly string[],
  at: Place,
): readonly Problem[] {
  if (known.includes(name)) return [];
  const near = nearestWord(name, known);
  return [{ kind: { is: 'unknown-target', target, name, near }, at }];
}

function boardReferences(recipe: Recipe, { parts, stacks }: Assembly): readonly Problem[] {
  const boards = recipe.boards.map(({ id }) => id);
  return [
    ...parts.flatMap(({ board, at }) => reference('board', board, boards, at)),
    ...stacks.flatMap(stack =>
      stack.boards.flatMap(board => reference('board', board, boards, stack.at)),
    ),
  ];
}

function layoutReferences({ parts, layouts }: Assembly): readonly Problem[] {
  const ids = layouts.map(({ id }) => id);
  const partIds = parts.map(({ id }) => id);
  return [
    ...parts.flatMap(({ repeat, at }) =>
      repeat?.kind === 'layout' ? reference('layout', repeat.layout, ids, at) : [],
    ),
    ...layouts.flatMap(({ spread, at }) => reference('part', spread, partIds, at)),
  ];
}

function listReference(recipe: Recipe, each: string, at: Place): readonly Problem[] {
  const questions = questionsOf(recipe);
  const found = questions.find(({ id }) => id === each);
  if (found === undefined) {
    const lists = questions.filter(({ kind }) => kind === 'items').map(({ id }) => id);
    return reference('question', each, lists, at);
  }
  return found.kind === 'items' ? [] : [{ kind: { is: 'wrong-list', name: each }, at }];
}

function useReferences(recipe: Recipe, use: PlacedAssembly): readonly Problem[] {
  const { assemblies } = recipe;
  const used = assemblies.find(({ id }) => id === use.assembly);
  if (used === undefined) {
    const ids = assemblies.map(({ id }) => id);
    return reference('assembly', use.assembly, ids, use.at);
  }
  const takes = used.takes.map(({ id }) => id);
  const given = use.sizes.map(({ take }) => take);
  const missing = takes.filter(take => !given.includes(take));
  return [
    ...use.sizes.flatMap(({ take, formula }) => reference('take', take, takes, formula.at)),
    ...missing.map((take): Problem => {
      return { kind: { is: 'missing-take', take, assembly: used.id }, at: use.at };
    }),
  ];
}

function selectorReferences(recipe: Recipe, assembly: Assembly): readonly Problem[] {
  const paths = pathsIn(recipe, assembly, []);
  const pick = (selector: Selector) => selectorReference(selector, paths);
  return [
    ...assembly.joints.flatMap(({ from, into }) => [...pick(from), ...pick(into)]),
    ...assembly.notches.flatMap(({ cut, over }) => [...pick(cut), ...pick(over)]),
  ];
}

const MOST_PATHS = 3000;

/** Paths of parts and uses as selectors of this assembly write them. */
function pathsIn(recipe: Recipe, assembly: Assembly, around: readonly string[]): readonly string[] {
  const own = [...assembly.parts, ...assembly.stacks].map(({ id }) => id);
  const paths = [...own];
  for (const { id, assembly: name } of assembly.places) {
    const inner = recipe.assemblies.find(other => other.id === name);
    paths.push(id);
    if (inner === undefined || around.includes(name) || paths.length > MOST_PATHS) continue;
    for (const path of pathsIn(recipe, inner, [...around, name])) paths.push(`${id}.${path}`);
  }
  return paths;
}

function selectorReference({ path, at }: Selector, paths: readonly string[]): readonly Problem[] {
  return reference('part', path, paths, at);
}

function holdReferences({ holds }: Recipe, made: Instances): readonly Problem[] {
  const joints = made.joints.map(joint => joint.name);
  return holds.flatMap(({ parts, on, joint, at }) => [
    ...[...parts, ...on].flatMap(selector => selectorReference(selector, made.paths)),
    ...(joint === undefined || made.joints.some(known => means(joint, known))
      ? []
      : reference('joint', joint, joints, at)),
  ]);
}

function stepReferences({ steps }: Recipe, made: Instances): readonly Problem[] {
  const paths = made.paths;
  const ids = steps.map(({ id }) => id);
  return steps.flatMap(({ cuts, sets, loose, joins, notches, timers, before: own, at }) => [
    ...[...timers, { before: own }].flatMap(({ before }) =>
      before.flatMap(id => reference('step', id, ids, at)),
    ),
    ...[...cuts, ...sets, ...loose].flatMap(selector => selectorReference(selector, paths)),
    ...joins
      .filter(name => !made.joints.some(joint => means(name, joint)))
      .flatMap(name =>
        reference(
          'joint',
          name,
          made.joints.map(joint => joint.name),
          at,
        ),
      ),
    ...notches
      .filter(name => !made.notches.some(notch => means(name, notch)))
      .flatMap(name =>
        reference(
          'notch',
          name,
          made.notches.map(notch => notch.name),
          at,
        ),
      ),
  ]);
}

/** Tools and cautions that the program does not know. */
export function checkKnown({ steps }: Recipe, known: Known): readonly Problem[] {
  return steps.flatMap(({ tools, care, at }) => [
    ...tools.flatMap(tool => reference('tool', tool, known.tools, at)),
    ...care.flatMap(caution => reference('caution', caution, known.cautions, at)),
  ]);
}
