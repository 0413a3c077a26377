import { formatMinutes } from '../measure/duration.js';
import { MINUTE_MS } from '../measure/spans.js';
import type { Plan } from '../plan/plan.js';
import { plannedByClock } from '../plan/session-clock.js';
import type { Progress } from './workbook.js';

/** "about 14 h at the bench by this journal; the plan said 15 h 45 min": hours of the clock, one beside the other. */
export function hoursWords(
  plan: Pick<Plan, 'steps' | 'time'>,
  { workedMs }: Pick<Progress, 'workedMs'>,
): string {
  const worked = formatMinutes(Math.round(workedMs / MINUTE_MS));
  return `about ${worked} at the bench by this journal; ${plannedWords(plan)}`;
}

function plannedWords(plan: Pick<Plan, 'steps' | 'time'>): string {
  const planned = plannedByClock(plan);
  return planned === undefined
    ? `the steps of the plan add up to ${formatMinutes(plan.time.hands.value)}`
    : `the plan said ${formatMinutes(planned)}`;
}
