import { closeUps } from '../../../drawing/close-up.js';
import { partNames } from '../../../drawing/part-names.js';
import { potsOf } from '../../../drawing/pots.js';
import { boardsInPicture, drawStepCorner } from '../../../drawing/step-drawing.js';
import { stepSubject } from '../../../drawing/step-subject.js';
import type { Plan, Step } from '../../../plan/plan.js';
import type { Subject } from '../../pictures.js';

/** What the picture of a step shows, with all that a picture needs. */
export function subjectOf(step: Step, plan: Plan): Subject {
  const { model, display } = plan;
  return {
    id: step.id,
    model,
    display,
    ...stepSubject(step),
    pots: potsOf(plan, step),
    names: partNames(plan),
    corner: { draw: view => drawStepCorner(plan, step, view), boards: boardsInPicture(plan, step) },
    closeUps: () => closeUps(plan, step),
  };
}
