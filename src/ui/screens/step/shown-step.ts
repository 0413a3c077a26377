import type { Step } from '../../../plan/plan.js';
import { currentStep, isDone } from '../../../workbook/next-step.js';
import type { Ask, Build } from '../../screen.js';

/** The step that somebody who comes to the bench wants to see; none when all are done. */
export function stepToOpen({ plan, progress }: Build): Step | undefined {
  const last = plan.steps.find(({ id }) => id === progress.lastStep);
  if (last !== undefined && !isDone(last, progress)) return last;
  return currentStep(plan.steps, progress);
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

/** What to record so that a return finds this step: nothing where it is done or noted already. */
export function visit(step: Step | undefined, build: Build, atMs: number): readonly Ask[] {
  if (step === undefined || isDone(step, build.progress)) return [];
  if (build.progress.lastStep === step.id) return [];
  return [{ kind: 'record', events: [{ kind: 'step-visited', atMs, step: step.id }] }];
}

/** To the bench, from any screen. */
export function asksToEnter(build: Build, nowMs: number): readonly Ask[] {
  return [...visit(stepToOpen(build), build, nowMs), { kind: 'go', to: 'step' }];
}
