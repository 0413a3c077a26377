import type { Plan, Step } from '../plan/plan.js';
import { isBegun, isDone, stepToReturn } from './next-step.js';
import type { Progress } from './workbook.js';

/**
 * Hardware, glue and sealer that are used for the first time in what is left of this session or in the
 * next one, as they are sold: what was in use already, in the step at hand too, is there or used up.
 */
export function neededNext({
  plan,
  progress,
}: {
  readonly plan: Plan;
  readonly progress: Progress;
}): readonly string[] {
  const begun = plan.steps.filter(step => isBegun(step, progress));
  const coming = stepsComing(plan, progress);
  return plan.hardware
    .filter(({ what }) => coming.some(step => uses(step, what)))
    .filter(({ what }) => !begun.some(step => uses(step, what)))
    .map(({ what, buy }) => `${what} (${buy})`);
}

/** Open steps of the session that the work is in, and of the one after. */
function stepsComing(plan: Plan, progress: Progress): readonly Step[] {
  const current = stepToReturn(plan.steps, progress);
  if (current === undefined) return [];
  const at = plan.time.sessions.findIndex(({ steps }) => steps.includes(current.id));
  if (at < 0) return [];
  const ids = plan.time.sessions.slice(at, at + 2).flatMap(({ steps }) => steps);
  return plan.steps.filter(step => ids.includes(step.id) && !isDone(step, progress));
}

/** Screws and brads are named in a step's settings; glue and sealer come with their cautions. */
function uses({ big, settings, care }: Step, what: string): boolean {
  if (what.startsWith('Glue')) return care.includes('glue');
  if (what.startsWith('Sealer')) return care.includes('sealer');
  return [big?.text ?? '', ...settings.map(({ text }) => text)].some(text => text.includes(what));
}
