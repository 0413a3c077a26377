import type { Plan, Step } from '../../src/plan/plan.js';
import { bestSight, type Frame, pictureOf } from '../../src/ui/pictures.js';
import { subjectOf } from '../../src/ui/screens/step/subject.js';

/** What a picture over the whole screen has of windows of 80x24 and 140x45. */
export const FRAMES: readonly Frame[] = [
  { columns: 80, rows: 20, ascii: false },
  { columns: 140, rows: 41, ascii: false },
];

/** Steps that have a picture. */
export function withPicture({ steps }: Plan): readonly Step[] {
  return steps.filter(({ bright }) => bright.length > 0);
}

/** Milliseconds from choosing the sight to the lines on the screen, nothing of it drawn before. */
export function firstPictureTime(plan: Plan, step: Step, frame: Frame): number {
  // What was drawn is kept for a model: a copy of it begins anew.
  const fresh: Plan = { ...plan, model: { ...plan.model } };
  const from = performance.now();
  const subject = subjectOf(step, fresh);
  pictureOf(subject, bestSight(subject, frame), frame);
  return performance.now() - from;
}
