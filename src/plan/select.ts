import type { Joint, Model, Part } from '../model/part.js';
import type { Selector } from '../recipe/recipe.js';

/** True when the selector names this path, or a use of an assembly that it lies in. */
export function picks(selector: string, path: string): boolean {
  if (!path.startsWith(selector)) return false;
  return path.length === selector.length || path[selector.length] === '.';
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

/** Joints that any of the names picks, in the order of the model. */
export function selectJoints(model: Model, names: readonly string[]): readonly Joint[] {
  const found = new Map<number, Joint>();
  const byRule = jointsByRule(model);
  for (const name of names) {
    const rule = name.slice(name.lastIndexOf('.') + 1);
    for (const { at, joint, path } of byRule.get(rule) ?? []) {
      if (ruleMatches(name, rule, path)) found.set(at, joint);
    }
  }
  return [...found].sort(([a], [b]) => a - b).map(([, joint]) => joint);
}

type Listed = { readonly at: number; readonly joint: Joint; readonly path: string };

const known = new WeakMap<Model, ReadonlyMap<string, readonly Listed[]>>();

/** Joints by their rule with the path of the part under the head, listed once since every step asks. */
function jointsByRule(model: Model): ReadonlyMap<string, readonly Listed[]> {
  const before = known.get(model);
  if (before !== undefined) return before;
  const pathById = new Map(model.parts.map(part => [part.id, part.path]));
  const byRule = new Map<string, Listed[]>();
  for (const [at, joint] of model.joints.entries()) {
    const listed = { at, joint, path: pathById.get(joint.from) ?? '' };
    const same = byRule.get(joint.rule);
    if (same === undefined) byRule.set(joint.rule, [listed]);
    else same.push(listed);
  }
  known.set(model, byRule);
  return byRule;
}
