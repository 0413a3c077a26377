import type { Mm } from '../measure/quantities.js';
import { sameLength } from '../measure/tolerance.js';

/** Sorted positions without repeats, and the number of each position that went in. */
export type Distinct = {
  readonly values: readonly Mm[];
  readonly indexOf: ReadonlyMap<Mm, number>;
};

/**
 * Sorts positions and lets those that are the same length share one number.
 * @example distinct([38.1, 0, 38.1000000001]).values // [0, 38.1]
 */
export function distinct(positions: readonly Mm[]): Distinct {
  const values: Mm[] = [];
  const indexOf = new Map<Mm, number>();
  let last: Mm | undefined;
  for (const position of [...positions].sort((a, b) => a - b)) {
    if (last === undefined || !sameLength(last, position)) values.push(position);
    last = position;
    indexOf.set(position, values.length - 1);
  }
  return { values, indexOf };
}
