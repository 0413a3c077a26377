import { closeUps } from '../../../drawing/close-up.js';
import { drawStepCorner, squareInput } from '../../../drawing/step-drawing.js';
import { stepScene } from '../../../drawing/step-scene.js';
import type { Plan, Step } from '../../../plan/plan.js';
import type { Subject } from '../../pictures.js';

/** Subjects don't change as long as their plan lives. */
const kept = new WeakMap<Plan, Map<string, Subject>>();

/** What the picture of a step shows, with all that a picture needs. */
export function subjectOf(step: Step, plan: Plan): Subject {
  const subjects = kept.get(plan) ?? new Map<string, Subject>();
  kept.set(plan, subjects);
  const subject = subjects.get(step.id) ?? makeSubject(step, plan);
  subjects.set(step.id, subject);
  return subject;
}

function makeSubject(step: Step, plan: Plan): Subject {
  const scene = stepScene(plan, step);
  const { bright, standing, onlyCut, notes } = scene;
  return {
    id: step.id,
    input: squareInput(plan, scene),
    corner: {
      draw: view => drawStepCorner(plan, step, view, scene),
      boards: bright.length + standing.length,
      isApart: !onlyCut,
    },
    notes,
    closeUps: () => closeUps(plan, step),
  };
}
