import type { Schedule, ScheduleProblem, Task, Turn } from './problem.js';

/**
 * Goes through a schedule from the problem and the turns alone: every task once and whole, the right people, inside
 * one session, quiet after the last hour, nobody twice at once, every wait kept, and that finish, sessions and
 * lower bound belong to it. It does not prove the bound again. One sentence for each fault; none when all is well.
 */
export function checkSchedule(problem: ScheduleProblem, schedule: Schedule): string[] {
  const turns = new Map(schedule.turns.map(turn => [turn.task, turn]));
  return [
    ...countFaults(problem, schedule.turns),
    ...problem.tasks.flatMap(task => turnFaults(task, turns.get(task.id), problem)),
    ...crowdFaults(schedule.turns),
    ...waitFaults(problem, turns),
    ...sumFaults(schedule),
  ];
}

function countFaults({ tasks }: ScheduleProblem, turns: readonly Turn[]): string[] {
  const faults = tasks.flatMap(({ id }) => {
    const count = turns.filter(({ task }) => task === id).length;
    return count === 1 ? [] : [`${id} is done ${count} times.`];
  });
  const strange = turns.filter(({ task }) => !tasks.some(({ id }) => id === task));
  return [...faults, ...strange.map(({ task }) => `${task} was never asked for.`)];
}

function turnFaults(task: Task, turn: Turn | undefined, problem: ScheduleProblem): string[] {
  if (turn === undefined) return [];
  const faults: string[] = [];
  const { id, minutes, needs, loud, from } = task;
  if (turn.to - turn.from !== minutes) faults.push(`${id} takes ${turn.to - turn.from} minutes.`);
  if (turn.from < from) faults.push(`${id} begins before it may.`);
  const session = problem.sessions[turn.session];
  const inside = session !== undefined && turn.from >= session.from && turn.to <= session.to;
  if (!inside) faults.push(`${id} lies outside its session.`);
  if (loud && session !== undefined && turn.to > session.quietFrom)
    faults.push(`${id} is loud after the last hour.`);
  const hours = session?.fair;
  if (task.fair && (hours === undefined || turn.from < hours.from || turn.to > hours.to))
    faults.push(`${id} lies outside the fair hours.`);
  const crew = [...turn.people].sort((a, b) => a - b).join();
  const fits =
    'all' in needs
      ? crew === [...needs.all].sort((a, b) => a - b).join()
      : turn.people.length === 1 && needs.anyOf.includes(turn.people[0] ?? -1);
  if (!fits) faults.push(`${id} is done by the wrong people.`);
  return faults;
}

function crowdFaults(turns: readonly Turn[]): string[] {
  return turns.flatMap((one, at) =>
    turns
      .slice(at + 1)
      .filter(other => one.from < other.to && other.from < one.to)
      .filter(other => one.people.some(person => other.people.includes(person)))
      .map(other => `Somebody does ${one.task} and ${other.task} at once.`),
  );
}

function waitFaults({ waits }: ScheduleProblem, turns: ReadonlyMap<string, Turn>): string[] {
  return waits.flatMap(({ first, then, minutes }) => {
    const end = turns.get(first)?.to;
    const begin = turns.get(then)?.from;
    if (end === undefined || begin === undefined) return [];
    return begin >= end + minutes ? [] : [`${then} does not wait ${minutes} minutes for ${first}.`];
  });
}

function sumFaults({ turns, finish, sessions, lowerBound, proof }: Schedule): string[] {
  const last = Math.max(0, ...turns.map(({ to }) => to));
  const used = new Set(turns.map(({ session }) => session)).size;
  const faults: string[] = [];
  if (finish !== last) faults.push(`The last task ends at ${last}, not ${finish}.`);
  if (sessions !== used) faults.push(`${used} sessions are used, not ${sessions}.`);
  if (lowerBound > finish) faults.push(`The bound ${lowerBound} is after the end ${finish}.`);
  if (proof.kind !== 'none' && lowerBound !== finish)
    faults.push('A proven end is not its own bound.');
  return faults;
}
