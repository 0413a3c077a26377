import type { ScheduleProblem, Task } from '../../../src/solve/schedule/problem.js';

/** One way to do a task: its first minute and its crew. */
type Way = { readonly task: Task; readonly from: number; readonly crew: readonly number[] };

/**
 * The same problem as a whole-number program in the LP text format: one variable for each task, crew and minute at
 * which it can begin (time-indexed form), everybody at most once a minute, each wait, `done` after every task.
 */
export function lpText(problem: ScheduleProblem, last: number): string {
  const ways = problem.tasks.flatMap(task => waysOf(task, problem, last));
  const name = ({ task, from, crew }: Way) =>
    `x${problem.tasks.indexOf(task)}_${from}_${crew.join('_')}`;
  const of = (id: string) => ways.filter(({ task }) => task.id === id);
  const sum = (terms: readonly string[]) => terms.join('\n + ');
  const rows: string[] = [];
  for (const { id } of problem.tasks) rows.push(`${sum(of(id).map(name))} = 1`);
  for (const { id, minutes } of problem.tasks) {
    const begins = of(id).map(way => `${way.from + minutes} ${name(way)}`);
    rows.push(`done - ${begins.join('\n - ')} >= 0`);
  }
  for (let person = 0; person < problem.people; person++) {
    for (let minute = 0; minute < last; minute++) {
      const busy = ways.filter(
        ({ task, from, crew }) =>
          crew.includes(person) && from <= minute && minute < from + task.minutes,
      );
      if (busy.length > 1) rows.push(`${sum(busy.map(name))} <= 1`);
    }
  }
  for (const { first, then, minutes } of problem.waits) {
    const early = problem.tasks.find(({ id }) => id === first)?.minutes ?? 0;
    const later = of(then).map(way => `${way.from} ${name(way)}`);
    const sooner = of(first).map(way => `${way.from + early + minutes} ${name(way)}`);
    rows.push(`${later.join('\n + ')}\n - ${sooner.join('\n - ')} >= 0`);
  }
  const binaries = ways.map(name).join('\n ');
  return `Minimize\n done\nSubject To\n${rows.map((row, at) => `r${at}: ${row}`).join('\n')}\nBinary\n ${binaries}\nEnd\n`;
}

function waysOf(task: Task, { sessions }: ScheduleProblem, last: number): readonly Way[] {
  const crews = 'all' in task.needs ? [task.needs.all] : task.needs.anyOf.map(person => [person]);
  return sessions.flatMap(({ from: opens, to, quietFrom, fair }) => {
    const hours = task.fair ? (fair ?? { from: to, to: opens }) : { from: opens, to };
    const { from } = hours;
    const end = Math.min(last, hours.to, task.loud ? Math.min(to, quietFrom) : to);
    const begins: Way[] = [];
    for (let at = Math.max(from, task.from); at + task.minutes <= end; at++)
      for (const crew of crews) begins.push({ task, from: at, crew });
    return begins;
  });
}
