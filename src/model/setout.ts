import type { Display } from '../measure/quantities.js';
import type { Scope } from '../recipe/evaluate.js';
import type { Problem } from '../recipe/problem.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import type { Model } from './part.js';
import { standBoards } from './setout-boards.js';
import { standingNames } from './setout-names.js';
import { type SizeFound, sizesFound } from './setout-sizes.js';
import { draftWhole } from './setout-whole.js';
import type { StackWish } from './stack.js';

export type SetOut =
  | {
      readonly ok: true;
      readonly model: Model;
      /** Names of the whole piece, for texts that come later. */
      readonly scope: Scope;
      readonly sizes: readonly SizeFound[];
      /** How high the recipe wished its stacks to be. */
      readonly stacks: readonly StackWish[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export type SetOutOptions = {
  /** Boards are bought wet: American lumber is dressed larger then. */
  readonly wet?: boolean;
  /** How lengths are written where a size says where it comes from. */
  readonly display?: Display;
};

/**
 * The boards of a recipe in space, with complete answers: every board placed once, notched where it
 * gives way, with all its contacts and joints. A bench seat 18 in high on 2x4 slats, rails and feet
 * stands on end panels of 15 in with posts of 11-1/2 in. Gives all problems where it cannot stand so.
 */
export function setOut(recipe: Recipe, answers: Answers, options: SetOutOptions = {}): SetOut {
  const { setting, built } = draftWhole(recipe, answers, options.wet === true);
  const { slate } = setting.ground;
  const sizes = sizesFound(setting, options.display);
  // Where sizes are wrong already, every clash that follows from them would be noise.
  if (slate.problems.length > 0) return { ok: false, problems: slate.problems };
  const model = standBoards(built, slate);
  if (slate.problems.length > 0) return { ok: false, problems: slate.problems };
  return {
    ok: true,
    model,
    scope: standingNames(setting.scope, built.parts, model.overall),
    sizes,
    stacks: setting.ground.stacks,
  };
}
