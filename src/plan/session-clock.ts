import type { Minutes } from '../measure/quantities.js';
import type { Plan, Session } from './plan.js';
import { isInGarage } from './step-lasts.js';

/** When the first move of a session is made, in minutes since midnight: later than its hours begin where sealer still dries. */
export function firstWork({ turns, from }: Pick<Session, 'turns' | 'from'>): Minutes {
  return turns.length === 0 ? from : Math.min(...turns.map(turn => turn.from));
}

/**
 * How long the plan keeps those who build, by the clock: each session from its first move to its last, and what comes
 * before the first session. What two do side by side counts once, so it is less than the minutes of all steps. None
 * where the work could not be laid into sessions.
 */
export function plannedByClock({ steps, time }: Pick<Plan, 'steps' | 'time'>): Minutes | undefined {
  if (time.sessions.length === 0) return undefined;
  const before = steps.reduce((sum, it) => sum + (isInGarage(it) ? 0 : it.minutes.value), 0);
  return time.sessions.reduce((sum, { minutes }) => sum + minutes, before);
}
