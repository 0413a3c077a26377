import type { Scope } from '../recipe/evaluate.js';
import type { Place } from '../recipe/place.js';
import type { Problem } from '../recipe/problem.js';
import type { Value } from '../recipe/values.js';

/** A name that is worked out when it is first asked for. */
export type LazyName = { readonly at: Place; work(): Value | Problem };

/**
 * Names that may be given in any order: each is worked out once, when something needs it. A name that
 * needs itself is a problem that tells the whole round.
 */
export class LazyScope implements Scope {
  private readonly known = new Map<string, Value | Problem>();
  private readonly underway: string[] = [];

  constructor(
    private readonly names: ReadonlyMap<string, LazyName>,
    private readonly outer: Scope,
  ) {}

  find(name: string): Value | Problem | undefined {
    const known = this.known.get(name);
    if (known !== undefined) return known;
    const lazy = this.names.get(name);
    if (lazy === undefined) return this.outer.find(name);
    const since = this.underway.indexOf(name);
    if (since >= 0) {
      const names = [...this.underway.slice(since), name];
      return { kind: { is: 'circular', names }, at: lazy.at };
    }
    this.underway.push(name);
    const value = lazy.work();
    this.underway.pop();
    this.known.set(name, value);
    return value;
  }
}

/** A few settled names in front of another scope: the sizes given to an assembly, one thing of a list. */
export function withNames(own: ReadonlyMap<string, Value>, outer: Scope): Scope {
  return { find: name => own.get(name) ?? outer.find(name) };
}

/** A length of so many mm as a formula sees it. */
export function lengthValue(value: number): Value {
  return { kind: 'number', value, power: 1 };
}

/** A plain number as a formula sees it. */
export function numberValue(value: number): Value {
  return { kind: 'number', value, power: 0 };
}
