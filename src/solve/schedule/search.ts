import { isSpent, spend, type Work } from '../work.js';
import { boundOf, tails } from './bound.js';
import type { Indexed } from './indexed.js';
import { firstState, type IndexedTurn, isOpen, type State, turnOf, withTurn } from './state.js';

/** The best order that was found, and whether every other was ruled out. */
export type Searched = {
  readonly best: State | undefined;
  readonly lowerBound: number;
  readonly complete: boolean;
  readonly cases: number;
};

/** An end that has to be met, and whether an order like the given one is worth a longer search. */
export type Within = { readonly finish: number; readonly patient?: boolean };

/**
 * Turns are made in the order of their beginnings, each as early as it can be: among such orders is one that ends
 * first. An order is given up when its bound is no better than the best, or when the same tasks were done before
 * with everybody free no later and nothing waiting longer. With `within`, the first order that ends by then will do;
 * it is looked for close to the order that the tasks were given in, and with `patient` no quicker guess is taken.
 */
export function searchOrders(it: Indexed, work: Work, within?: Within): Searched {
  const search = new Search(it, work, within);
  return search.run();
}

class Search {
  readonly #tail: readonly number[];
  readonly #seen = new Map<string, (readonly number[])[]>();
  /** Everybody can do everything that one of them is needed for. */
  readonly #alike: boolean;
  #best: State | undefined;
  #cases = 0;
  /** An order has to end before this to be of use. */
  #limit: number;

  constructor(
    private readonly it: Indexed,
    private readonly work: Work,
    private readonly within: Within | undefined,
  ) {
    this.#tail = tails(it);
    this.#alike = it.crews.every(
      crews => crews.length === it.people || crews[0]?.length === it.people,
    );
    this.#limit = within === undefined ? Number.POSITIVE_INFINITY : within.finish + 1;
  }

  run(): Searched {
    const first = firstState(this.it);
    const lowerBound = boundOf(this.it, first, this.#tail);
    if (lowerBound < this.#limit) {
      const guesses = this.within?.patient ? [this.#asGiven] : [this.#asGiven, this.#byTail];
      for (const order of guesses) this.#keep(this.#greedy(first, order));
      if (this.#goOn(lowerBound)) this.#branch(first);
    }
    const complete = !isSpent(this.work);
    return { best: this.#best, lowerBound, complete, cases: this.#cases };
  }

  #goOn(lowerBound: number): boolean {
    if (this.within !== undefined) return this.#best === undefined;
    return this.#best === undefined || this.#best.finish > lowerBound;
  }

  readonly #byTail = (one: IndexedTurn, other: IndexedTurn): number =>
    one.from - other.from || this.#behind(other) - this.#behind(one) || one.task - other.task;

  readonly #asGiven = (one: IndexedTurn, other: IndexedTurn): number =>
    one.from - other.from || one.task - other.task;

  #behind({ task }: IndexedTurn): number {
    return (this.it.minutes[task] ?? 0) + (this.#tail[task] ?? 0);
  }

  #keep(state: State | undefined): void {
    if (state === undefined || state.finish >= this.#limit) return;
    this.#best = state;
    this.#limit = state.finish;
  }

  #greedy(
    first: State,
    order: (one: IndexedTurn, other: IndexedTurn) => number,
  ): State | undefined {
    let state = first;
    while (state.count < this.it.ids.length) {
      spend(this.work, this.it.ids.length);
      const [next] = this.#nextTurns(state)?.toSorted(order) ?? [];
      if (next === undefined) return undefined;
      state = withTurn(this.it, state, next);
    }
    return state;
  }

  #branch(state: State): void {
    if (isSpent(this.work)) return;
    if (state.count === this.it.ids.length) {
      this.#keep(state);
      return;
    }
    this.#cases += 1;
    spend(this.work, this.it.ids.length);
    if (boundOf(this.it, state, this.#tail) >= this.#limit || this.#wasSeen(state)) return;
    for (const turn of this.#choices(state)) {
      this.#branch(withTurn(this.it, state, turn));
      if (this.within !== undefined && this.#best !== undefined) return;
    }
  }

  /** Every open task with each crew; nothing when a task can never be done any more. */
  #nextTurns(state: State): readonly IndexedTurn[] | undefined {
    const turns: IndexedTurn[] = [];
    for (let task = 0; task < this.it.ids.length; task++) {
      if (!isOpen(this.it, state, task)) continue;
      const own = this.#turnsOf(task, state);
      if (own.length === 0) return undefined;
      turns.push(...own);
    }
    return turns;
  }

  #turnsOf(task: number, state: State): readonly IndexedTurn[] {
    const turns: IndexedTurn[] = [];
    const free = new Set<number>();
    for (const crew of this.it.crews[task] ?? []) {
      const at = state.free[crew[0] ?? 0] ?? 0;
      // Two people who are free at the same minute make no difference where either will do.
      if (crew.length === 1 && this.#alike && free.has(at)) continue;
      free.add(at);
      const turn = turnOf(this.it, state, { task, crew });
      if (turn !== undefined) turns.push(turn);
    }
    return turns;
  }

  /** A turn that leaves room for another whole one before it is of no use, nor one that begins before the last. */
  #choices(state: State): readonly IndexedTurn[] {
    const turns = this.#nextTurns(state) ?? [];
    const soonestEnd = Math.min(...turns.map(({ to }) => to));
    return turns
      .filter(({ from }) => from < soonestEnd && from >= state.lastFrom)
      .toSorted(this.within === undefined ? this.#byTail : this.#asGiven);
  }

  /** Has a state with the same tasks done been here that is in every way as good? Otherwise it is kept. */
  #wasSeen(state: State): boolean {
    const key = state.done.map(it => (it ? '1' : '0')).join('');
    const waiting = state.ready.filter((_, task) => !state.done[task]);
    const here = [state.lastFrom, ...state.free, ...waiting];
    const known = this.#seen.get(key) ?? [];
    spend(this.work, known.length);
    if (known.some(other => other.every((value, at) => value <= (here[at] ?? 0)))) return true;
    const kept = known.filter(other => !here.every((value, at) => value <= (other[at] ?? 0)));
    this.#seen.set(key, [...kept, here]);
    return false;
  }
}
