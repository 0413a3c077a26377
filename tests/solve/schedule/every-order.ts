import type { ScheduleProblem, Task } from '../../../src/solve/schedule/problem.js';

/**
 * The earliest end by trying every order and every crew, minute by minute and without any rule for leaving one out:
 * slow, and meant to be easy to trust. Undefined when the sessions do not hold the work.
 */
export function earliestEnd(problem: ScheduleProblem): number | undefined {
  let best: number | undefined;
  const go = (ends: ReadonlyMap<string, number>, busy: readonly Busy[]): void => {
    if (ends.size === problem.tasks.length) {
      const end = Math.max(0, ...ends.values());
      if (best === undefined || end < best) best = end;
      return;
    }
    for (const task of problem.tasks) {
      const ready = readyAt(task, ends, problem);
      if (ready === undefined) continue;
      for (const crew of crewsOf(task)) {
        const from = firstMinute(task, ready, { crew, busy, problem });
        if (from === undefined) continue;
        const to = from + task.minutes;
        go(new Map([...ends, [task.id, to]]), [...busy, { from, to, crew }]);
      }
    }
  };
  go(new Map(), []);
  return best;
}

type Busy = { readonly from: number; readonly to: number; readonly crew: readonly number[] };

function crewsOf({ needs }: Task): readonly (readonly number[])[] {
  return 'all' in needs ? [needs.all] : needs.anyOf.map(person => [person]);
}

function readyAt(
  task: Task,
  ends: ReadonlyMap<string, number>,
  { waits }: ScheduleProblem,
): number | undefined {
  if (ends.has(task.id)) return undefined;
  const own = waits.filter(({ then }) => then === task.id);
  if (own.some(({ first }) => !ends.has(first))) return undefined;
  return Math.max(task.from, ...own.map(it => (ends.get(it.first) ?? 0) + it.minutes));
}

type Crowd = {
  readonly crew: readonly number[];
  readonly busy: readonly Busy[];
  readonly problem: ScheduleProblem;
};

function firstMinute(task: Task, ready: number, { crew, busy, problem }: Crowd) {
  const last = problem.sessions.at(-1)?.to ?? 0;
  for (let from = ready; from + task.minutes <= last; from++) {
    const to = from + task.minutes;
    const open = problem.sessions.some(
      session =>
        from >= session.from &&
        to <= (task.loud ? Math.min(session.to, session.quietFrom) : session.to) &&
        (!task.fair ||
          (session.fair !== undefined && from >= session.fair.from && to <= session.fair.to)),
    );
    const taken = busy.some(
      other => from < other.to && other.from < to && other.crew.some(it => crew.includes(it)),
    );
    if (open && !taken) return from;
  }
  return undefined;
}
