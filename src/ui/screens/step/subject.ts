import type { Plan, Step } from '../../../plan/plan.js';
import type { Subject } from '../../pictures.js';

/**
 * What the picture of a step shows. Pieces that are cut or notched stand nowhere yet, so they are
 * shown where they will be in the finished piece.
 */
export function subjectOf(step: Step, { model, display }: Plan): Subject {
  const { id, bright, standing } = step;
  const whole = bright.length === 0 || step.phase === 'cut' || step.phase === 'notch';
  return { id, model, display, bright, standing: whole ? undefined : standing };
}
