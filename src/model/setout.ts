import type { Display, Mm } from '../measure/quantities.js';
import type { Scope } from '../recipe/evaluate.js';
import type { Problem } from '../recipe/problem.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import type { Clash } from './clashes.js';
import { type Measured, measuredOfWhole, NOTHING_MEASURED, TOLD_NOT_REFUSED } from './measured.js';
import type { Model } from './part.js';
import { standBoards } from './setout-boards.js';
import type { Built } from './setout-draft.js';
import { standingNames } from './setout-names.js';
import { type SizeFound, sizesFound } from './setout-sizes.js';
import { sizeAt } from './setout-use.js';
import { draftWhole } from './setout-whole.js';
import type { StackWish } from './stack.js';

export type SetOut =
  | {
      readonly ok: true;
      readonly model: Model;
      /** Names of the whole piece, for texts that come later. */
      readonly scope: Scope;
      readonly sizes: readonly SizeFound[];
      /** A size of the whole or of a use, by its path. */
      readonly sizeAt: (path: string) => Mm | undefined;
      /** How high the recipe wished its stacks to be. */
      readonly stacks: readonly StackWish[];
      /** Boards that measured sizes push into each other by little. */
      readonly tight: readonly Clash[];
    }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export type SetOutOptions = {
  /** Boards are bought wet: American lumber is dressed larger then. */
  readonly wet?: boolean;
  /** What was measured at the bench takes the place of what was planned. */
  readonly measured?: Measured;
  /** How lengths are written where a size says where it comes from. */
  readonly display?: Display;
};

/**
 * The boards of a recipe in space, with complete answers: every board placed once, notched where it
 * gives way, with all its contacts and joints. A bench seat 18 in high on 2x4 slats, rails and feet
 * stands on end panels of 15 in with posts of 11-1/2 in. Gives all problems where it cannot stand so.
 */
export function setOut(recipe: Recipe, answers: Answers, options: SetOutOptions = {}): SetOut {
  const { measured = NOTHING_MEASURED } = options;
  const wet = options.wet === true;
  const uses = recipe.whole.places.map(({ id }) => id);
  const whole = measuredOfWhole(measured, uses);
  const drawn = draftWhole(recipe, answers, { wet, measured: whole });
  const frames = measured.size > whole.size;
  const real = frames ? draftWhole(recipe, answers, { wet, measured }) : drawn;
  const { setting, built } = real;
  const { slate } = setting.ground;
  const sizes = sizesFound(setting, options.display);
  // Where sizes are wrong already, every clash that follows from them would be noise.
  if (slate.problems.length > 0) return { ok: false, problems: slate.problems };
  const drafts = areAlike(built, drawn.built) ? drawn.built : built;
  const { model, tight } = standBoards(drafts, slate, measured.size > 0 ? TOLD_NOT_REFUSED : 0);
  if (slate.problems.length > 0) return { ok: false, problems: slate.problems };
  return {
    ok: true,
    model: following(model, built),
    scope: standingNames(setting.scope, built.parts, model.overall),
    sizes,
    stacks: setting.ground.stacks,
    sizeAt: path => sizeAt(setting, path),
    tight,
  };
}

/** The same boards, whatever their sizes. */
function areAlike(a: Built, b: Built): boolean {
  return a.parts.length === b.parts.length && a.parts.every(({ id }, i) => b.parts[i]?.id === id);
}

/**
 * The piece as it is drawn, with the lengths and rows that measured frames ask for. How a frame is joined
 * and what it touches do not change because it came out a hair higher; what goes into it does.
 */
function following(model: Model, { parts, spreads }: Built): Model {
  const lengths = new Map(parts.map(({ id, length }) => [id, length]));
  return {
    ...model,
    parts: model.parts.map(part => ({ ...part, length: lengths.get(part.id) ?? part.length })),
    spreads,
  };
}
