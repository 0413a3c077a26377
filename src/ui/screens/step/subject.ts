import { stepSubject } from '../../../drawing/step-subject.js';
import type { Plan, Step } from '../../../plan/plan.js';
import type { Subject } from '../../pictures.js';

/** What the picture of a step shows, with all that a picture needs. */
export function subjectOf(step: Step, { model, display }: Plan): Subject {
  return { id: step.id, model, display, ...stepSubject(step) };
}
