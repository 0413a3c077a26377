import { answerScope } from '../recipe/questions.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import type { Measured } from './measured.js';
import { buildAssembly } from './setout-assembly.js';
import type { Built } from './setout-draft.js';
import { Ground } from './setout-ground.js';
import { Setting } from './setout-setting.js';

/** The whole piece as drafted boards, with the scope and the slate that they were drafted on. */
export type Whole = { readonly setting: Setting; readonly built: Built };

/** What boards are like: bought wet, or as they were measured. */
export type Wood = { readonly wet: boolean; readonly measured?: Measured };

/** Drafts every board of a recipe with these answers, from green lumber where it is bought wet. */
export function draftWhole(recipe: Recipe, answers: Answers, wood: Wood): Whole {
  const ground = new Ground(recipe, answers, wood);
  const setting = new Setting(ground, recipe.whole, answerScope(recipe, answers));
  return { setting, built: buildAssembly(setting, { built: new Map(), around: [] }) };
}
