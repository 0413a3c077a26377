import type { Work } from '../work.js';
import { placeFrom } from './clock.js';
import { fewerSessions } from './fewer-sessions.js';
import { type Indexed, indexed, stretchOf } from './indexed.js';
import type { Found, Proof, ScheduleProblem } from './problem.js';
import { type Searched, searchOrders } from './search.js';
import { turnsOf } from './state.js';

/** Counted steps that a plan may cost: some tens of milliseconds. */
const USUAL_LIMIT = 1_000_000;

/**
 * The order that is done first, and among those one with the fewest sessions. With the limit of counted steps
 * reached it is the best that was found, and says so. The same problem gives the same schedule.
 * @example one task of 60 min and one of 30 min for one person from minute 0: done at minute 90
 */
export function planSchedule(problem: ScheduleProblem, limit = USUAL_LIMIT): Found {
  const it = indexed(problem);
  const work: Work = { done: 0, limit };
  if (!everyTaskFits(it)) return { ok: false };
  const searched = searchOrders(it, work);
  const { best } = searched;
  if (best === undefined) return { ok: false };
  const fewer = fewerSessions(it, best, work);
  const turns = turnsOf(it, fewer.state);
  const proof = proofOf(searched, best.finish);
  return {
    ok: true,
    schedule: {
      turns,
      finish: best.finish,
      lowerBound: proof.kind === 'none' ? searched.lowerBound : best.finish,
      proof,
      sessions: new Set(turns.map(({ session }) => session)).size,
      fewestProven: fewer.proven,
      work: work.done,
    },
  };
}

/** A task that goes into no session ends the search before it begins. */
function everyTaskFits(it: Indexed): boolean {
  return it.ids.every(
    (_, task) => placeFrom(it.sessions, it.release[task] ?? 0, stretchOf(it, task)) !== undefined,
  );
}

function proofOf({ lowerBound, complete, cases }: Searched, finish: number): Proof {
  if (finish === lowerBound) return { kind: 'bound' };
  return complete ? { kind: 'search', cases } : { kind: 'none' };
}
