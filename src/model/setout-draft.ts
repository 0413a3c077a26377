import type { Scope } from '../recipe/evaluate.js';
import type { Place } from '../recipe/place.js';
import type { JointRule } from '../recipe/recipe.js';
import type { Axis, Box, Part, Spread } from './part.js';

/** A notch that is not cut yet; `for` is the index of the part that it makes room for. */
export type NotchDraft = { readonly rule: string; readonly box: Box; readonly for: number };

/** A board that stands in the frame of an assembly, before it is carried to where that stands. */
export type Draft = Omit<Part, 'notches' | 'solid'> & {
  /** Grows while the assemblies around it declare their notches. */
  readonly notches: NotchDraft[];
  /** Of the part in the recipe. */
  readonly at: Place;
};

/** A joint rule of one standing assembly: its parts by index, its formulas in their scope. */
export type JointDraft = {
  readonly rule: JointRule;
  readonly drive: Axis | undefined;
  readonly from: readonly number[];
  readonly into: readonly number[];
  readonly scope: Scope;
};

/** An assembly in its own frame, with everything that stands in it. */
export type Built = {
  readonly parts: readonly Draft[];
  readonly spreads: readonly Spread[];
  readonly joints: readonly JointDraft[];
};

/** The indices of all parts by path. */
export function indicesByPath(parts: readonly Draft[]): ReadonlyMap<string, readonly number[]> {
  const byPath = new Map<string, number[]>();
  parts.forEach(({ path }, i) => {
    const indices = byPath.get(path);
    if (indices === undefined) byPath.set(path, [i]);
    else indices.push(i);
  });
  return byPath;
}
