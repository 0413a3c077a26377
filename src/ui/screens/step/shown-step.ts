import type { Step } from '../../../plan/plan.js';
import type { Event } from '../../../workbook/events.js';
import { isDone, stepToReturn } from '../../../workbook/next-step.js';
import type { Ask, Build, Context } from '../../screen.js';

/** The step that somebody who comes to the bench wants to see; none when all are done. */
export function stepToOpen({ plan, progress }: Build): Step | undefined {
  return stepToReturn(plan.steps, progress);
}

/** What a screen over the bench is about: the step that is seen there while it is open, else where the work is. */
export function stepAtHand(build: Build, { stepSeen }: Pick<Context, 'stepSeen'>) {
  const seen = build.plan.steps.find(({ id }) => id === stepSeen);
  return seen !== undefined && !isDone(seen, build.progress) ? seen : stepToOpen(build);
}

/** The step that comes after this one is done: the next one open in order, else the first one open. */
export function stepAfter(step: Step, { plan, progress }: Build): Step | undefined {
  const open = (other: Step) => other.id !== step.id && !isDone(other, progress);
  const at = plan.steps.indexOf(step);
  return plan.steps.slice(at + 1).find(open) ?? plan.steps.find(open);
}

/** The neighbor in order, for looking around; none beyond the ends. */
export function stepBeside(step: Step, by: 1 | -1, { plan }: Build): Step | undefined {
  return plan.steps[plan.steps.indexOf(step) + by];
}

/** What to record where work begins at a step that was only looked at: nothing where a return finds it. */
export function arrival(step: Step | undefined, build: Build, atMs: number): readonly Event[] {
  if (step === undefined || isDone(step, build.progress)) return [];
  if (stepToOpen(build)?.id === step.id) return [];
  return [{ kind: 'step-visited', atMs, step: step.id }];
}

/** To the bench, from any screen; the time of work there counts from now on. */
export function asksToEnter(build: Build, nowMs: number): readonly Ask[] {
  const step = stepToOpen(build)?.id;
  const noted = step === undefined || step === build.progress.lastStep;
  const events = noted ? [] : [{ kind: 'step-visited', atMs: nowMs, step } as const];
  return [
    ...(events.length === 0 ? [] : [{ kind: 'record', events } as const]),
    { kind: 'go', to: 'step' },
  ];
}
