import type { Stretch } from './clock.js';
import type { ScheduleProblem, Session } from './problem.js';

/** The problem with numbers in place of ids, tasks in an order in which each comes after those it waits for. */
export type Indexed = {
  readonly ids: readonly string[];
  readonly minutes: readonly number[];
  readonly loud: readonly boolean[];
  readonly fair: readonly boolean[];
  readonly release: readonly number[];
  /** Crews that can do it: one where all of them are needed, one each where any of them does. */
  readonly crews: readonly (readonly (readonly number[])[])[];
  readonly before: readonly (readonly Link[])[];
  readonly after: readonly (readonly Link[])[];
  readonly sessions: readonly Session[];
  readonly people: number;
};

/** What the clock has to know of a task. */
export function stretchOf({ minutes, loud, fair }: Indexed, task: number): Stretch {
  return { minutes: minutes[task] ?? 0, loud: loud[task] ?? false, fair: fair[task] };
}

export type Link = { readonly task: number; readonly minutes: number };

/** A waiting circle is a mistake of the caller and throws. */
export function indexed({ people, tasks, waits, sessions }: ScheduleProblem): Indexed {
  const order = inOrder(
    tasks.map(({ id }) => id),
    waits,
  );
  const numberOf = new Map(order.map((id, number) => [id, number]));
  const sorted = order.map(id => tasks.find(task => task.id === id)).filter(it => it !== undefined);
  const links = waits.map(({ first, then, minutes }) => ({
    first: numberOf.get(first) ?? -1,
    then: numberOf.get(then) ?? -1,
    minutes,
  }));
  return {
    ids: order,
    minutes: sorted.map(task => task.minutes),
    loud: sorted.map(task => task.loud),
    fair: sorted.map(task => task.fair === true),
    release: sorted.map(task => task.from),
    crews: sorted.map(({ needs }) =>
      'all' in needs ? [needs.all] : needs.anyOf.map(person => [person]),
    ),
    before: order.map((_, at) =>
      links.filter(({ then }) => then === at).map(it => ({ task: it.first, minutes: it.minutes })),
    ),
    after: order.map((_, at) =>
      links.filter(({ first }) => first === at).map(it => ({ task: it.then, minutes: it.minutes })),
    ),
    sessions,
    people,
  };
}

/** Ids so that each comes after those it waits for, otherwise as they were given. */
function inOrder(ids: readonly string[], waits: ScheduleProblem['waits']): readonly string[] {
  const known = new Set(ids);
  for (const { first, then } of waits) {
    if (!known.has(first) || !known.has(then))
      throw new Error(`a wait for a task that is not there: ${first}, ${then}`);
  }
  const done = new Set<string>();
  const order: string[] = [];
  while (order.length < ids.length) {
    const next = ids.find(
      id => !done.has(id) && waits.every(({ first, then }) => then !== id || done.has(first)),
    );
    if (next === undefined) throw new Error('tasks wait for each other in a circle');
    done.add(next);
    order.push(next);
  }
  return order;
}
