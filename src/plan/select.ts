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
  if (name.slice(dot + 1) !== rule) return false;
  return dot < 0 || picks(name.slice(0, dot), path);
}

/** Joints that any of the names picks. */
export function selectJoints(model: Model, names: readonly string[]): readonly Joint[] {
  const pathById = new Map(model.parts.map(part => [part.id, part.path]));
  return model.joints.filter(joint =>
    names.some(name => ruleMatches(name, joint.rule, pathById.get(joint.from) ?? '')),
  );
}
