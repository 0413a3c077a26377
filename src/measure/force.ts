import type { Kilograms } from './quantities.js';
import { pounds } from './weight.js';

/** Forces are in newtons inside. */
export type Newtons = number;

/** Standard gravity, exact by definition: 3rd CGPM, 1901; NIST SP 811, Appendix B. */
const STANDARD_GRAVITY = 9.80665;

/** What a weight presses with: 100 kg press with 980.665 N. */
export function weightForce(weight: Kilograms): Newtons {
  return weight * STANDARD_GRAVITY;
}

/** The weight that presses with a force: 980.665 N are 100 kg. */
export function forceWeight(force: Newtons): Kilograms {
  return force / STANDARD_GRAVITY;
}

/** Pounds-force as newtons: `poundsForce(250)` is 1112.06. */
export function poundsForce(n: number): Newtons {
  return weightForce(pounds(n));
}

/** Newtons as pounds-force: 1112 N is 249.99. */
export function toPoundsForce(force: Newtons): number {
  return force / poundsForce(1);
}
