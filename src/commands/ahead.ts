import type { Ahead } from '../files/shelf.js';
import type { Step } from '../plan/plan.js';
import { stepToReturn } from '../workbook/next-step.js';
import type { Progress } from '../workbook/workbook.js';

/** What the home screen tells of a build without opening it. */
export function aheadOf(steps: readonly Step[], progress: Progress): Ahead {
  const next = stepToReturn(steps, progress);
  return { stepsInAll: steps.length, next: next?.title ?? '' };
}
