import { placeFrom } from './clock.js';
import { type Indexed, stretchOf } from './indexed.js';
import type { Turn } from './problem.js';

/** Turns made so far, in the order of their beginnings. Made anew for each step of a search. */
export type State = {
  readonly done: readonly boolean[];
  readonly count: number;
  /** When each person has a free hand again. */
  readonly free: readonly number[];
  /** When each task that waits for done ones may begin; for a done one, its end. */
  readonly ready: readonly number[];
  readonly lastFrom: number;
  readonly finish: number;
  readonly turns: Path | undefined;
};

/** Turns as a chain, so that states share them. */
export type Path = { readonly turn: IndexedTurn; readonly before: Path | undefined };

export type IndexedTurn = {
  readonly task: number;
  readonly from: number;
  readonly to: number;
  readonly session: number;
  readonly people: readonly number[];
};

export function firstState({ ids, people, release }: Indexed): State {
  return {
    done: ids.map(() => false),
    count: 0,
    free: Array.from({ length: people }, () => 0),
    ready: release,
    lastFrom: 0,
    finish: 0,
    turns: undefined,
  };
}

/** May this task be done next? */
export function isOpen({ before }: Indexed, { done }: State, task: number): boolean {
  return !done[task] && (before[task] ?? []).every(link => done[link.task]);
}

/** The earliest turn of an open task with this crew; none when no session is left for it. */
export function turnOf(
  it: Indexed,
  { free, ready }: State,
  { task, crew }: { readonly task: number; readonly crew: readonly number[] },
): IndexedTurn | undefined {
  const at = crew.reduce((late, person) => Math.max(late, free[person] ?? 0), ready[task] ?? 0);
  const work = stretchOf(it, task);
  const place = placeFrom(it.sessions, at, work);
  return place && { task, ...place, to: place.from + work.minutes, people: crew };
}

export function withTurn(it: Indexed, state: State, turn: IndexedTurn): State {
  const done = [...state.done];
  const free = [...state.free];
  const ready = [...state.ready];
  done[turn.task] = true;
  ready[turn.task] = turn.to;
  for (const person of turn.people) free[person] = turn.to;
  for (const { task, minutes } of it.after[turn.task] ?? [])
    ready[task] = Math.max(ready[task] ?? 0, turn.to + minutes);
  return {
    done,
    count: state.count + 1,
    free,
    ready,
    lastFrom: turn.from,
    finish: Math.max(state.finish, turn.to),
    turns: { turn, before: state.turns },
  };
}

/** The turns of a state in order, with ids. */
export function turnsOf({ ids }: Indexed, { turns }: State): readonly Turn[] {
  const found: Turn[] = [];
  for (let at = turns; at !== undefined; at = at.before) {
    const { task, ...rest } = at.turn;
    found.unshift({ task: ids[task] ?? '', ...rest });
  }
  return found;
}
