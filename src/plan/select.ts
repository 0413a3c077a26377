import type { Joint, Model, Part } from '../model/part.js';
import type { Selector } from '../recipe/recipe.js';

/** True when the selector names this path, or a use of an assembly that it lies in. */
export function picks(selector: string, path: string): boolean {
  return path === selector || path.startsWith(`${selector}.`);
}

/** Parts that any of the selectors picks, in the order of the model. */
export function selectParts(model: Model, selectors: readonly Selector[]): readonly Part[] {
  return model.parts.filter(part => selectors.some(({ path }) => picks(path, part.path)));
}

/**
 * Joints and notches are named by their rule behind the uses they lie in: `end_panel.corner` is the
 * rule `corner` wherever a part of the use `end_panel` is concerned.
 */
export function ruleMatches(name: string, rule: string, path: string): boolean {
  const dot = name.lastIndexOf('.');
  if (name.length - dot - 1 !== rule.length || !name.endsWith(rule)) return false;
  return dot < 0 || picks(name.slice(0, dot), path);
}

/** Joints that any of the names picks. */
export function selectJoints(model: Model, names: readonly string[]): readonly Joint[] {
  if (names.length === 0) return [];
  const pathById = pathsOf(model);
  return model.joints.filter(joint =>
    names.some(name => ruleMatches(name, joint.rule, pathById.get(joint.from) ?? '')),
  );
}

const known = new WeakMap<Model, ReadonlyMap<string, string>>();

/** The path of each part; every step asks for them, so they are listed once for a model. */
function pathsOf(model: Model): ReadonlyMap<string, string> {
  const before = known.get(model);
  if (before !== undefined) return before;
  const paths = new Map(model.parts.map(part => [part.id, part.path]));
  known.set(model, paths);
  return paths;
}
