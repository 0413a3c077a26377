import type { Display } from '../measure/quantities.js';
import type { Model, Part } from '../model/part.js';
import type { Scope } from '../recipe/evaluate.js';
import type { StepRule } from '../recipe/recipe.js';
import { cutSteps } from './cut-steps.js';
import { cupDetails, joinDetails } from './join-details.js';
import { notchDetails } from './notch-details.js';
import type {
  CutRow,
  FastenerRow,
  GluePlan,
  NotchRow,
  Purchase,
  SealerPlan,
  Step,
} from './plan.js';
import { selectJoints, selectParts } from './select.js';
import { stepMinutes } from './step-minutes.js';
import { type RuledStep, stepNeeds } from './step-needs.js';
import { fillTemplate } from './step-text.js';
import { dayWorkOf, timersOf } from './step-timers.js';
import { applies, numberOf } from './step-values.js';
import { careOf } from './tool-rows.js';

/** What the steps are made from: everything that the plan has worked out before them. */
export type Worked = {
  /** Of the recipe, all of them. */
  readonly rules: readonly StepRule[];
  readonly model: Model;
  readonly scope: Scope;
  readonly display: Display;
  readonly cutList: readonly CutRow[];
  readonly notches: readonly NotchRow[];
  readonly fasteners: readonly FastenerRow[];
  readonly purchases: readonly Purchase[];
  readonly glue: GluePlan;
  readonly sealer: SealerPlan;
};

/**
 * The build in order. A step that cuts becomes one step for each setting of the stop; the others keep
 * their own. Each knows which parts it brings (bright) and which stand there already.
 */
export function steps(worked: Worked): readonly Step[] {
  const { rules } = worked;
  const standing = new Set<string>();
  const made: RuledStep[] = [];
  for (const rule of rules) {
    if (!applies(rule.when, worked.scope)) continue;
    const bare = bareStep(rule, worked);
    const own =
      rule.cuts.length > 0 ? cutSteps(rule, bare, worked) : [withDetails(rule, bare, worked)];
    const there = [...standing];
    const after = timersBefore(rule.id, rules);
    for (const step of own) made.push({ rule, step: { ...step, standing: there, after } });
    for (const part of selectParts(worked.model, rule.sets)) standing.add(part.id);
  }
  const needs = stepNeeds(made, worked.model);
  return made.map(({ step }) => ({ ...step, needs: needs.get(step.id) ?? [] }));
}

/** Clamps and drying that a step has to wait for, wherever they were begun. */
function timersBefore(step: string, rules: readonly StepRule[]): readonly string[] {
  return rules.flatMap(({ id, timers }) =>
    timers.filter(timer => timer.before.includes(step)).map(timer => `${id}/${timer.id}`),
  );
}

/** The words of a step and what it sets in place, before cuts, notches and joints add their figures. */
function bareStep(rule: StepRule, worked: Worked): Step {
  const { scope, display, model } = worked;
  const fill = (template: StepRule['title']) => fillTemplate(template, scope, display);
  const day = dayWorkOf(rule, worked);
  return {
    id: rule.id,
    phase: rule.phase,
    title: fill(rule.title),
    who: rule.who,
    handsOff: [],
    tools: rule.tools,
    plain: rule.plain.map(fill),
    say: rule.say.map(fill),
    why: rule.why ? fill(rule.why) : '',
    look: [...(rule.first ? [rule.first] : []), ...rule.look].map(fill),
    firstCheck: rule.first !== undefined,
    after: [],
    needs: [],
    ...(day && { day }),
    care: careOf(rule),
    settings: [],
    timers: timersOf(rule, worked),
    joins: rule.joins,
    bright: selectParts(model, [...rule.sets, ...rule.loose]).map(part => part.id),
    standing: [],
    minutes: stepMinutes(rule, worked),
  };
}

function withDetails(rule: StepRule, bare: Step, worked: Worked): Step {
  if (rule.counts !== undefined) return { ...bare, ...cupDetails(worked.fasteners) };
  const notched = rule.notches.length > 0 ? notchDetails(rule.notches, worked) : undefined;
  const joined =
    rule.joins.length > 0 ? joinDetails(selectJoints(worked.model, rule.joins), worked) : undefined;
  const settings = [...(notched?.settings ?? []), ...(joined?.settings ?? [])];
  const tally = askedTally(rule, worked) ?? notched?.tally ?? setTally(rule, worked);
  const big = notched?.big ?? joined?.big;
  const bright = bare.bright.length > 0 ? bare.bright : (notched?.bright ?? []);
  return {
    ...bare,
    settings,
    bright,
    ...(tally === undefined ? {} : { tally }),
    ...(big === undefined ? {} : { big }),
  };
}

function askedTally(rule: StepRule, { scope, model }: Worked): Step['tally'] {
  const count = numberOf(rule.tally, scope);
  return count === undefined ? undefined : { of: commonName(selectParts(model, rule.sets)), count };
}

/**
 * Screwed joints are counted one by one; where brads hold, the pieces that are set are. Setting whole
 * panels or boxes in place is not counted.
 */
function setTally(rule: StepRule, { model }: Worked): Step['tally'] {
  const joints = selectJoints(model, rule.joins);
  if (joints.length < 2) return undefined;
  if (joints.every(joint => joint.with === 'screw')) return { of: 'joint', count: joints.length };
  const parts = selectParts(model, rule.sets);
  return parts.length < 2 ? undefined : { of: commonName(parts), count: parts.length };
}

function commonName(parts: readonly Part[]): string {
  const names = new Set(parts.map(part => part.name.toLowerCase()));
  const [only] = names;
  return names.size === 1 && only !== undefined ? only : 'piece';
}
