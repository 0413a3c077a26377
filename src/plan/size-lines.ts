import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import type { Value } from '../recipe/values.js';
import type { SizeLine } from './plan.js';

type Size = {
  readonly id: string;
  readonly value: Value;
  readonly because: string;
  readonly why: string;
};

/** The named sizes of a recipe that are numbers, each with the sum it comes from. */
export function sizeLines(sizes: readonly Size[]): readonly SizeLine[] {
  return sizes.flatMap(({ id, value, because, why }) => {
    if (value.kind !== 'number') return [];
    const words = why === '' ? because : `${why}: ${because}`;
    return [{ id, figure: figure(value.value, unitOf(value.power), words, COMPUTED) }];
  });
}

function unitOf(power: number) {
  if (power === 1) return 'mm';
  if (power === 2) return 'mm2';
  return power === 3 ? 'mm3' : 'count';
}
