import { SIXTEENTHS } from '../measure/displays.js';
import type { Display } from '../measure/quantities.js';
import { evaluate, explain, type Scope } from '../recipe/evaluate.js';
import type { Problem } from '../recipe/problem.js';
import { answerScope } from '../recipe/questions.js';
import type { NamedSize, Recipe } from '../recipe/recipe.js';
import type { Answers, Value } from '../recipe/values.js';
import { bounds } from './box.js';
import { contactsOf } from './contacts.js';
import type { Model } from './part.js';
import { buildAssembly } from './setout-assembly.js';
import { cutBoards, noteClashes } from './setout-boards.js';
import { Ground } from './setout-ground.js';
import { closeJoints } from './setout-joints.js';
import { standingNames } from './setout-names.js';
import { Setting } from './setout-setting.js';

/** A named size of the whole piece, with the sum it comes from and why it is so. */
export type SizeFound = {
  readonly id: string;
  readonly value: Value;
  readonly because: string;
  readonly why: string;
};

export type SetOut =
  | {
      readonly ok: true;
      readonly model: Model;
      /** Names of the whole piece, for texts that come later. */
      readonly scope: Scope;
      readonly sizes: readonly SizeFound[];
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
 * gives way, with all its contacts and joints. A seat of 48 in between 18 in planters stands on posts
 * of 11-1/2 in. Gives all problems where the piece cannot stand like that.
 */
export function setOut(recipe: Recipe, answers: Answers, options: SetOutOptions = {}): SetOut {
  const { wet = false, display = SIXTEENTHS } = options;
  const ground = new Ground(recipe, answers, wet);
  const { slate } = ground;
  const setting = new Setting(ground, recipe.whole, answerScope(recipe, answers));
  const workshop = { whole: setting.scope, built: new Map(), around: [] };
  const { parts: drafts, spreads, joints: rules } = buildAssembly(setting, workshop);
  const sizes = recipe.whole.sizes.flatMap(size => sizeFound(size, setting, display));
  const parts = cutBoards(drafts, slate);
  // Where sizes are wrong already, every clash after it would be noise.
  if (slate.problems.length > 0) return { ok: false, problems: slate.problems };
  noteClashes(parts, new Map(drafts.map(({ id, at }) => [id, at])), slate);
  const contacts = contactsOf(parts);
  const joints = closeJoints(rules, parts, { contacts, slate });
  if (slate.problems.length > 0) return { ok: false, problems: slate.problems };
  const overall = bounds(parts.map(part => part.box)) ?? NOWHERE;
  const model = { parts, contacts, joints, spreads, overall };
  return { ok: true, model, scope: standingNames(setting.scope, drafts, overall), sizes };
}

const NOWHERE = { min: { x: 0, y: 0, z: 0 }, max: { x: 0, y: 0, z: 0 } };

function sizeFound(size: NamedSize, setting: Setting, display: Display): readonly SizeFound[] {
  const { id, formula, why } = size;
  const found = evaluate(formula, setting.scope);
  if (!found.ok) {
    setting.ground.slate.note(found.problem);
    return [];
  }
  return [{ id, value: found.value, because: explain(formula, setting.scope, display), why }];
}
