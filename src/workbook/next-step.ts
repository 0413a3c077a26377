import type { Step } from '../plan/plan.js';
import type { Progress } from './workbook.js';

/** Is this step ticked off? */
export function isDone({ id }: Step, { done }: Progress): boolean {
  return done.has(id);
}

/** Is this check of a step made? Checks are counted from 0. */
export function isCheckMade({ id }: Step, number: number, { checks }: Progress): boolean {
  return checks.has(`${id}#${number}`);
}

/** Was anything made at this step: a piece, a check, a wait that began, all of it? */
export function isBegun(step: Step, progress: Progress): boolean {
  return (
    isDone(step, progress) ||
    (progress.tallies.get(step.id) ?? 0) > 0 ||
    step.look.some((_, number) => isCheckMade(step, number, progress)) ||
    progress.timers.some(timer => timer.step === step.id)
  );
}

/** Was anything made at any step? */
export function isAnyBegun({ done, tallies, checks, timers }: Progress): boolean {
  return (
    done.size > 0 ||
    checks.size > 0 ||
    timers.length > 0 ||
    [...tallies.values()].some(count => count > 0)
  );
}

/** The first step in order that is not done; none when the piece is finished. */
export function currentStep(steps: readonly Step[], progress: Progress): Step | undefined {
  return steps.find(step => !isDone(step, progress));
}

/**
 * Where the work is: the step that was worked at last, unless it is done, else the current one. None
 * when the piece is finished.
 */
export function stepToReturn(steps: readonly Step[], progress: Progress): Step | undefined {
  const last = steps.find(({ id }) => id === progress.lastStep);
  return last !== undefined && !isDone(last, progress) ? last : currentStep(steps, progress);
}

/**
 * How many of these steps are done. Steps that a changed answer made vanish are in the journal still
 * but no longer in the plan, and do not count.
 */
export function doneCount(steps: readonly Step[], progress: Progress): number {
  return steps.filter(step => isDone(step, progress)).length;
}

/** How far a count has come: 7 of 12 posts. */
export type TallySoFar = { readonly done: number; readonly count: number; readonly of: string };

/**
 * Pieces done of a step that counts pieces; all of them once the step itself is done. Never more than
 * there are, also where a changed answer left fewer to make.
 */
export function tallyOf(step: Step, progress: Progress): TallySoFar | undefined {
  if (step.tally === undefined) return undefined;
  const { count, of } = step.tally;
  const made = progress.tallies.get(step.id) ?? 0;
  const done = isDone(step, progress) ? count : Math.min(made, count);
  return { done, count, of };
}
