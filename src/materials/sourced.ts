import type { Source } from '../measure/figure.js';

/** A trade number or sentence beside the publication it comes from. */
export type Sourced<Value> = {
  readonly value: Value;
  readonly source: Source;
};

/**
 * Puts a value beside its source.
 * @example sourced(0.35, seen('wood-handbook', 'Table 5-3a')).value // 0.35
 */
export function sourced<Value>(value: Value, source: Source): Sourced<Value> {
  return { value, source };
}
