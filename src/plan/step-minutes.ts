import { type TaskId, taskMinutes } from '../materials/task-times.js';
import { toSquareFeet } from '../measure/area.js';
import { COMMON_PRACTICE, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Minutes } from '../measure/quantities.js';
import { exposed, exposedByPart, surfaceOfParts } from '../model/exposed.js';
import type { Model } from '../model/part.js';
import type { StepRule } from '../recipe/recipe.js';
import { count } from '../text/plural.js';
import { ruleMatches, selectJoints, selectParts } from './select.js';
import { numberOf } from './step-values.js';
import type { Worked } from './steps.js';

/** From this many equal notches on it pays to clamp several together. */
const GANGED_FROM = 4;
const GRITS = 2;
/** Undersides, insides and ends in the dark are left as the mill left them: about half of it all; common practice. */
const SEEN = 1 / 2;

/** So many of each task. */
type Counts = readonly (readonly [task: TaskId, units: number])[];

/** Hands-on minutes of one person for what is counted, and those that come beside it. */
export function countedMinutes(counts: Counts, because: string, beside: Minutes = 0): Figure {
  const minutes = counts.reduce((sum, [task, units]) => sum + taskMinutes(task, units), beside);
  return figure(Math.max(1, Math.round(minutes)), 'min', because, COMMON_PRACTICE);
}

/** Hands-on minutes of one person for a step: what its counts imply and what the recipe adds. */
export function stepMinutes(rule: StepRule, worked: Worked): Figure {
  const counts = [...notching(rule, worked), ...joining(rule, worked), ...surfaces(rule, worked)];
  const beside = asked(rule, worked);
  return countedMinutes(counts, minuteWords(counts, beside), beside);
}

/** What of the minutes is counted, and what stands in the recipe. */
function minuteWords(counts: Counts, beside: Minutes): string {
  const isCounted = counts.some(([, units]) => units > 0);
  const told = `${Math.round(beside)} min by the recipe, common practice`;
  if (!isCounted) return told;
  const words = 'counted by cut, notch, screw and square foot at the usual time of each';
  return beside === 0 ? words : `${words}, and ${told}, to mark, set and square it`;
}

type AtStop = {
  readonly pieces: number;
  /** Boards whose end is squared first. */
  readonly ends: number;
  readonly isFirst: boolean;
};

/** One setting of the stop and its cuts; the minutes that the recipe adds fall on the first setting. */
export function cutMinutes(
  { pieces, ends, isFirst }: AtStop,
  rule: StepRule,
  worked: Worked,
): Figure {
  const counts: Counts = [
    ['set-stop', 1],
    ['square-end', ends],
    ['crosscut-at-stop', pieces],
  ];
  const squared = ends === 0 ? '' : `, ${count(ends, 'board end')} squared`;
  const words = `one setting of the stop${squared} and ${count(pieces, 'cut')}`;
  return countedMinutes(counts, words, isFirst ? asked(rule, worked) : 0);
}

function asked({ minutes }: StepRule, { scope }: Worked): Minutes {
  return numberOf(minutes, scope) ?? 0;
}

function notching({ notches }: StepRule, { model }: Worked): Counts {
  const cuts = model.parts.reduce(
    (sum, part) =>
      sum +
      part.notches.filter(notch => notches.some(name => ruleMatches(name, notch.rule, part.path)))
        .length,
    0,
  );
  return [[cuts >= GANGED_FROM ? 'notch-ganged' : 'notch-single', cuts]];
}

function joining({ joins }: StepRule, { model }: Worked): Counts {
  const joints = selectJoints(model, joins);
  const screws = joints.reduce((sum, joint) => sum + (joint.with === 'screw' ? joint.each : 0), 0);
  const glued = new Set(
    joints
      .filter(joint => joint.glue && joint.with === 'screw')
      .map(joint => joint.from + joint.into),
  );
  const bradded = new Set(joints.filter(joint => joint.with === 'brad').map(joint => joint.from));
  return [
    ['whole-screw', screws],
    ['glue-joint', glued.size],
    ['brad-piece', bradded.size],
  ];
}

/** Sanding and sealing, told by the tools that a step takes up. */
function surfaces(rule: StepRule, { model, rules }: Worked): Counts {
  const { phase, tools, loose } = rule;
  const sanding = (feet: number): Counts => [['sand-grit', feet * SEEN * GRITS]];
  if (tools.includes('sander') && loose.length > 0) return sanding(looseFeet(model, loose));
  if (phase !== 'finish') return [];
  if (tools.includes('sander')) return sanding(openFeet(model) - sandedFeet(model, rules));
  return tools.includes('brush') ? [['brush-coat', openFeet(model)]] : [];
}

/** What touches no other wood once it is together, as the sealer is bought for it, in square feet. */
function openFeet(model: Model): number {
  const { faces, endGrain } = exposed(model);
  return toSquareFeet(faces + endGrain);
}

/** Every face of these parts as they lie on the bench, in square feet. */
function looseFeet(model: Model, loose: StepRule['loose']): number {
  const { faces, endGrain } = surfaceOfParts(selectParts(model, loose));
  return toSquareFeet(faces + endGrain);
}

/** What of the open faces was sanded while the parts lay loose, in square feet. */
function sandedFeet(model: Model, rules: readonly StepRule[]): number {
  const sanding = rules.filter(({ tools }) => tools.includes('sander'));
  const open = exposedByPart(model);
  const parts = selectParts(
    model,
    sanding.flatMap(({ loose }) => loose),
  );
  return toSquareFeet(
    parts.reduce((sum, { id }) => {
      const { faces = 0, endGrain = 0 } = open.get(id) ?? {};
      return sum + faces + endGrain;
    }, 0),
  );
}
