import type { CubicMm, Mm } from '../measure/quantities.js';
import type { Sourced } from './sourced.js';

/**
 * A pot as sold. Makers differ, so a pot in hand is measured and not looked up; each size here says
 * where it is from, and what no source gives is left out.
 */
export type Pot = {
  readonly id: string;
  readonly name: string;
  readonly shape: 'round' | 'square';
  /** Over the rim. */
  readonly top: Sourced<Mm>;
  readonly height: Sourced<Mm>;
  readonly bottom?: Sourced<Mm>;
};

/**
 * What a tapered round pot holds to the brim: (pi h / 12)(D² + Dd + d²).
 * @example coneSpace(inches(12), inches(12), inches(12)) // a cylinder, 1357 cu in
 */
export function coneSpace(top: Mm, bottom: Mm, height: Mm): CubicMm {
  return ((Math.PI * height) / 12) * (top ** 2 + top * bottom + bottom ** 2);
}
