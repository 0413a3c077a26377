import type { Minutes } from '../measure/quantities.js';
import type { Session } from './plan.js';

/** When the first move of a session is made, in minutes since midnight: later than its hours begin where sealer still dries. */
export function firstWork({ turns, from }: Pick<Session, 'turns' | 'from'>): Minutes {
  return turns.length === 0 ? from : Math.min(...turns.map(turn => turn.from));
}
