import { taskMinutes } from '../materials/task-times.js';
import { toSquareFeet } from '../measure/area.js';
import { COMMON_PRACTICE, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { surfaceOfParts } from '../model/exposed.js';
import { evaluate } from '../recipe/evaluate.js';
import type { StepRule } from '../recipe/recipe.js';
import { ruleMatches, selectJoints } from './select.js';
import type { Worked } from './steps.js';

/** From this many equal notches on it pays to clamp several together. */
const GANGED_FROM = 4;
const GRITS = 2;

/** Hands-on minutes of one person for a step: what its counts imply and what the recipe adds. */
export function stepMinutes(rule: StepRule, worked: Worked): Figure {
  const minutes =
    asked(rule, worked) + notching(rule, worked) + joining(rule, worked) + surfaces(rule, worked);
  return rounded(minutes, 'counted by cut, notch, screw and square foot at the usual time of each');
}

/** One setting of the stop and its cuts; the minutes that the recipe adds fall on the first setting. */
export function cutMinutes(pieces: number, first: boolean, rule: StepRule, worked: Worked): Figure {
  const minutes =
    taskMinutes('set-stop', 1) +
    taskMinutes('crosscut-at-stop', pieces) +
    (first ? asked(rule, worked) : 0);
  return rounded(minutes, `one setting of the stop and ${pieces} cuts`);
}

function rounded(minutes: number, because: string): Figure {
  return figure(Math.max(1, Math.round(minutes)), 'min', because, COMMON_PRACTICE);
}

function asked({ minutes }: StepRule, { scope }: Worked): number {
  if (!minutes) return 0;
  const result = evaluate(minutes, scope);
  return result.ok && result.value.kind === 'number' ? result.value.value : 0;
}

function notching({ notches }: StepRule, { model }: Worked): number {
  const count = model.parts.reduce(
    (sum, part) =>
      sum +
      part.notches.filter(notch => notches.some(name => ruleMatches(name, notch.rule, part.path)))
        .length,
    0,
  );
  return taskMinutes(count >= GANGED_FROM ? 'notch-ganged' : 'notch-single', count);
}

function joining({ joins }: StepRule, { model }: Worked): number {
  const joints = selectJoints(model, joins);
  const screws = joints.reduce((sum, joint) => sum + (joint.with === 'screw' ? joint.each : 0), 0);
  const glued = new Set(
    joints
      .filter(joint => joint.glue && joint.with === 'screw')
      .map(joint => joint.from + joint.into),
  );
  const bradded = new Set(joints.filter(joint => joint.with === 'brad').map(joint => joint.from));
  return taskMinutes('whole-screw', screws) + taskMinutes('glue-joint', glued.size) + bradded.size;
}

/** Sanding and sealing go over every board; told by the tools that a step takes up. */
function surfaces({ phase, tools }: StepRule, { model }: Worked): number {
  if (phase !== 'finish') return 0;
  const { faces, endGrain } = surfaceOfParts(model.parts);
  const feet = toSquareFeet(faces + endGrain);
  if (tools.includes('sander')) return taskMinutes('sand-grit', feet * GRITS) / 2;
  return tools.includes('brush') ? taskMinutes('brush-coat', feet) : 0;
}
