import { SIXTEENTHS } from '../measure/displays.js';
import type { Display } from '../measure/quantities.js';
import { explain } from '../recipe/evaluate.js';
import type { Value } from '../recipe/values.js';
import type { Setting } from './setout-setting.js';

/** A named size of the whole piece, with the sum it comes from and why it is so. */
export type SizeFound = {
  readonly id: string;
  readonly value: Value;
  readonly because: string;
  readonly why: string;
};

/** The named sizes of an assembly in the order of the file; one that cannot be worked out is noted. */
export function sizesFound(setting: Setting, display: Display = SIXTEENTHS): readonly SizeFound[] {
  const { assembly, ground, scope } = setting;
  return assembly.sizes.flatMap(({ id, formula, why }) => {
    const value = scope.find(id);
    if (value === undefined) throw new Error(`the size ${id} is not in its own scope`);
    const found = ground.slate.take(value);
    if (found === undefined) return [];
    return [{ id, value: found, because: explain(formula, scope, display), why }];
  });
}
