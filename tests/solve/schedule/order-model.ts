import type { ScheduleProblem, Task } from '../../../src/solve/schedule/problem.js';

/**
 * Work that needs certain people, as a whole-number program in the LP text format: for each task the session it falls
 * in and how far into it, for each two tasks of one person that no wait puts in order which of them comes first.
 * (A.S. Manne, "On the job-shop scheduling problem", Operations Research 8, 1960, with sessions added.)
 */
export function orderText(problem: ScheduleProblem): string {
  const { tasks, sessions, waits } = problem;
  const rows: string[] = [];
  const bounds: string[] = [];
  const chosen: string[] = [];
  const last = sessions.at(-1)?.to ?? 0;
  tasks.forEach((task, i) => {
    const places = sessions.flatMap(({ from: opens, to, quietFrom, fair }, k) => {
      const { from, to: shuts } = task.fair
        ? (fair ?? { from: to, to: opens })
        : { from: opens, to };
      const room = Math.min(shuts, task.loud ? quietFrom : to) - from - task.minutes;
      return room < 0 ? [] : [{ k, from, room }];
    });
    for (const { k } of places) chosen.push(`y${i}_${k}`);
    rows.push(`${places.map(({ k }) => `y${i}_${k}`).join(' + ')} = 1`);
    const parts = places.map(({ k, from }) => `- ${from} y${i}_${k} - o${i}_${k}`);
    rows.push(`s${i} ${parts.join(' ')} = 0`);
    for (const { k, room } of places) rows.push(`o${i}_${k} - ${room} y${i}_${k} <= 0`);
    rows.push(`done - s${i} >= ${task.minutes}`);
    bounds.push(`0 <= s${i} <= ${last}`);
  });
  const at = (id: string) => tasks.findIndex(task => task.id === id);
  for (const { first, then, minutes } of waits) {
    const lasts = tasks[at(first)]?.minutes ?? 0;
    rows.push(`s${at(then)} - s${at(first)} >= ${lasts + minutes}`);
  }
  for (const [i, j] of openPairs(problem)) {
    const z = `z${i}_${j}`;
    chosen.push(z);
    rows.push(`s${j} - s${i} - ${last} ${z} >= ${(tasks[i]?.minutes ?? 0) - last}`);
    rows.push(`s${i} - s${j} + ${last} ${z} >= ${tasks[j]?.minutes ?? 0}`);
  }
  const numbered = rows.map((row, r) => `r${r}: ${row}`).join('\n');
  return `Minimize\n done\nSubject To\n${numbered}\nBounds\n ${bounds.join('\n ')}\nBinary\n ${chosen.join('\n ')}\nEnd\n`;
}

/** Two tasks that share somebody and that may come in either order. */
function openPairs({ tasks, waits }: ScheduleProblem): readonly (readonly [number, number])[] {
  const follows = tasks.map(({ id }) => reachable(id, waits));
  return tasks.flatMap((one, i) =>
    tasks.flatMap((other, j) => {
      const ordered = follows[i]?.has(other.id) || follows[j]?.has(one.id);
      return j > i && !ordered && share(one, other) ? [[i, j] as const] : [];
    }),
  );
}

function reachable(id: string, waits: ScheduleProblem['waits']): ReadonlySet<string> {
  const found = new Set<string>();
  const go = (from: string): void => {
    for (const { first, then } of waits) {
      if (first !== from || found.has(then)) continue;
      found.add(then);
      go(then);
    }
  };
  go(id);
  return found;
}

function share(one: Task, other: Task): boolean {
  if (!('all' in one.needs) || !('all' in other.needs)) throw new Error('only fixed people here');
  const people = other.needs.all;
  return one.needs.all.some(person => people.includes(person));
}
