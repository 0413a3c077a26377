import { COMPUTED, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Display } from '../measure/quantities.js';
import { extent } from '../model/box.js';
import type { Model } from '../model/part.js';
import { setOut } from '../model/setout.js';
import { weightOf } from '../model/weight.js';
import type { Problem } from '../recipe/problem.js';
import { answerText, askedQuestions } from '../recipe/questions.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import type { AtBench } from './as-cut.js';
import { fasteners } from './fasteners.js';
import { fitChecks } from './fit-checks.js';
import { gluePlan } from './glue-plan.js';
import { glueUpRows, splitSteps } from './glue-rows.js';
import { hardware } from './hardware.js';
import { withCrew } from './helper-part.js';
import { holdInputs } from './hold-roles.js';
import { holdRows, notChecked } from './holds.js';
import { withMarks } from './mark-lines.js';
import type { AnswerLine, Plan, Purchase } from './plan.js';
import { planScope } from './plan-scope.js';
import { withRipping } from './rip-steps.js';
import { sawOrder } from './saw-order.js';
import { sawing } from './sawing.js';
import { sealerPlan } from './sealer-plan.js';
import { type Setting, settingOf } from './setting.js';
import { sizeLines } from './size-lines.js';
import { spacingRows } from './spacing-rows.js';
import { steps } from './steps.js';
import { tightWords } from './tight-words.js';
import { timePlan } from './time-plan.js';
import { cautionsOf, toolsOf } from './tool-rows.js';
import { withTradeLines } from './trade-lines.js';
import { tradeParts } from './trade-parts.js';
import { tradeTroubles } from './trade-troubles.js';
import { warnings } from './warnings.js';

export type MadePlan =
  | { readonly ok: true; readonly plan: Plan }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * The whole job from a recipe and complete answers: the one place where the stages are joined. The
 * same inputs give the same plan. What was measured at the bench takes the place of what was planned,
 * and pieces that are cut stay as they are. Problems are those of setting out: a piece that can't stand there.
 */
export function makePlan(
  recipe: Recipe,
  answers: Answers,
  display: Display,
  bench?: AtBench,
): MadePlan {
  const setting = settingOf(answers, display);
  const wood = { wet: setting.dryness.wetSections, ...(bench && { measured: bench.measured }) };
  const out = setOut(recipe, answers, { ...wood, display });
  if (!out.ok) return out;
  const { model } = out;
  const { troubles: renumbered, ...sawn } = sawing(recipe, answers, { out, setting, bench });
  const { rows: screws, ...held } = fasteners(model, setting);
  const wet = { glue: gluePlan(model, setting), sealer: sealerPlan(model, setting) };
  const scope = planScope(out.scope, screws, wet, display);
  const worked = { rules: recipe.steps, model, scope, display, ...sawn, fasteners: screws, ...wet };
  const made = { ...sawn, steps: steps(worked) };
  const told = withRipping(made, sawn.purchases, setting);
  const split = splitSteps(told, { ...setting, ...wet, model });
  const bare = withCrew(told, setting, split);
  const glueUps = glueUpRows(split, bare, wet.glue);
  const trade = tradeParts(recipe, answers, { ...out, setting, glueUps });
  const spacing = spacingRows(model, setting, bench?.cut ?? []);
  const marked = withMarks(bare, { model, spacing, display });
  const build = withTradeLines(marked, trade, { display, ...wet });
  const tight = tightWords(out.tight, model, display);
  const troubles = [...renumbered, ...held.troubles, ...tradeTroubles(trade, screws), ...tight];
  const carry = holdInputs(recipe, answers, setting);
  const holds = holdRows(model, carry);
  const fit = fitChecks(recipe.fit, scope, display);
  return {
    ok: true,
    plan: {
      ...named(recipe, answers, display),
      overall: overallFigures(model),
      weight: weightFigure(model, setting),
      sizes: sizeLines(out.sizes),
      ...sawn,
      sawOrder: sawOrder(sawn.cutList),
      cost: costFigure(sawn.purchases),
      spacing,
      screws,
      hardware: hardware(screws, wet.glue, wet.sealer, setting),
      ...wet,
      ...trade,
      fit,
      holds,
      holdsNot: recipe.holds.length > 0 ? notChecked(carry) : [],
      tools: toolsOf(build),
      cautions: cautionsOf(build, setting),
      warnings: warnings({ fit, holds, purchases: sawn.purchases, spacing, troubles, setting }),
      steps: build,
      time: timePlan(build, setting),
      model,
    },
  };
}

function named(recipe: Recipe, answers: Answers, display: Display) {
  const { id, title, about } = recipe;
  return { recipe: id, title, about, display, answers: answerLines(recipe, answers, display) };
}

function answerLines(recipe: Recipe, answers: Answers, display: Display): readonly AnswerLine[] {
  return askedQuestions(recipe, answers).flatMap(question => {
    const answer = answers[question.id];
    return answer
      ? [{ id: question.id, say: question.say, text: answerText(question, answer, display) }]
      : [];
  });
}

function overallFigures({ overall }: Model) {
  const along = (axis: 'x' | 'y' | 'z', words: string): Figure =>
    figure(extent(overall, axis), 'mm', `${words} over all boards`, COMPUTED);
  return {
    width: along('x', 'left to right'),
    depth: along('y', 'front to back'),
    height: along('z', 'ground to top'),
  };
}

function weightFigure(model: Model, { species }: Setting): Figure {
  const { value, source } = species.density12;
  const kilograms = weightOf(model, () => value);
  const because = `wood after notching at ${value} kg per cubic meter (${species.name}, 12 % moisture); wet boards weigh more`;
  return figure(kilograms, 'kg', because, source);
}

function costFigure(bought: readonly Purchase[]): Figure {
  const cents = bought.reduce((sum, purchase) => sum + purchase.cost.value, 0);
  return figure(cents, 'cents', 'boards to buy at the prices you gave', COMPUTED);
}
