import { type TaskId, taskMinutes } from '../materials/task-times.js';
import { toSquareFeet } from '../measure/area.js';
import { COMMON_PRACTICE, type Figure } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Minutes } from '../measure/quantities.js';
import { surfaceOfParts } from '../model/exposed.js';
import { evaluate } from '../recipe/evaluate.js';
import type { StepRule } from '../recipe/recipe.js';
import { ruleMatches, selectJoints } from './select.js';
import type { Worked } from './steps.js';

/** From this many equal notches on it pays to clamp several together. */
const GANGED_FROM = 4;
const GRITS = 2;

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
  const words = 'counted by cut, notch, screw and square foot at the usual time of each';
  return countedMinutes(counts, words, asked(rule, worked));
}

/** One setting of the stop and its cuts; the minutes that the recipe adds fall on the first setting. */
export function cutMinutes(pieces: number, first: boolean, rule: StepRule, worked: Worked): Figure {
  const counts = [['set-stop', 1] as const, ['crosscut-at-stop', pieces] as const];
  const words = `one setting of the stop and ${pieces} cuts`;
  return countedMinutes(counts, words, first ? asked(rule, worked) : 0);
}

function asked({ minutes }: StepRule, { scope }: Worked): Minutes {
  if (!minutes) return 0;
  const result = evaluate(minutes, scope);
  return result.ok && result.value.kind === 'number' ? result.value.value : 0;
}

function notching({ notches }: StepRule, { model }: Worked): Counts {
  const count = model.parts.reduce(
    (sum, part) =>
      sum +
      part.notches.filter(notch => notches.some(name => ruleMatches(name, notch.rule, part.path)))
        .length,
    0,
  );
  return [[count >= GANGED_FROM ? 'notch-ganged' : 'notch-single', count]];
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

/** Sanding and sealing go over every board; told by the tools that a step takes up. */
function surfaces({ phase, tools }: StepRule, { model }: Worked): Counts {
  if (phase !== 'finish') return [];
  const { faces, endGrain } = surfaceOfParts(model.parts);
  const feet = toSquareFeet(faces + endGrain);
  if (tools.includes('sander')) return [['sand-grit', (feet * GRITS) / 2]];
  return tools.includes('brush') ? [['brush-coat', feet]] : [];
}
