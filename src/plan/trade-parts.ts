import type { Model } from '../model/part.js';
import type { StackWish } from '../model/stack.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import { footRows } from './foot-rows.js';
import { GLUE } from './glue-plan.js';
import { glueRules } from './glue-rules.js';
import type { Plan } from './plan.js';
import { planterRows } from './planter-rows.js';
import { planterBoxes } from './planter-stands.js';
import { sealRules } from './seal-rules.js';
import { SEALER } from './sealer-plan.js';
import type { Setting } from './setting.js';
import { squareRows } from './squares.js';

/** What the rules of the trade say about this very piece, beside its boards and their fasteners. */
export type TradeParts = Pick<
  Plan,
  'glueUps' | 'glueDay' | 'sealDay' | 'squares' | 'feet' | 'planters'
>;

type SetOut = {
  readonly model: Model;
  readonly stacks: readonly StackWish[];
  readonly setting: Setting;
  readonly glueUps: Plan['glueUps'];
};

/** Worked out from the boards in space, the answers and the steps as the recipe tells them. */
export function tradeParts(recipe: Recipe, answers: Answers, out: SetOut): TradeParts {
  const { model, stacks, setting, glueUps } = out;
  const { display } = setting;
  return {
    glueUps,
    glueDay: glueRules(GLUE, setting),
    sealDay: sealRules(SEALER, display),
    squares: squareRows(recipe.steps, model, display),
    feet: footRows(model, answers, display),
    planters: planterRows(planterBoxes(recipe, answers, { model, stacks }), display),
  };
}
