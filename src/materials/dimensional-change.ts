import { type Sourced, sourced } from './sourced.js';
import { workedOut } from './sources.js';

/** Moisture percent above which most woods no longer swell. */
const FIBER_SATURATION = 30;

/**
 * Change of size per 1 % of moisture, as a fraction, from the shrinkage green to oven-dry in percent.
 * This is how the coefficients of Wood Handbook Table 13-5 (6 % to 14 % moisture) follow from the
 * shrinkage of Table 4-3; redwood, western redcedar and northern white-cedar saturate at 22 %.
 * @example changeCoefficient(6.7) // American chestnut, tangential: 0.00234
 */
export function changeCoefficient(shrinkPercent: number, saturation = FIBER_SATURATION): number {
  return 1 / ((100 * saturation) / shrinkPercent - saturation + 10);
}

/**
 * The coefficient that follows from a wood's shrinkage, for woods that no table at hand lists.
 * @example changeFrom(7.8).value // Norway spruce, tangential: 0.00274
 */
export function changeFrom(shrinkPercent: number, saturation = FIBER_SATURATION): Sourced<number> {
  const saturated = saturation === FIBER_SATURATION ? '' : ` and saturation at ${saturation} %`;
  return sourced(
    Math.round(changeCoefficient(shrinkPercent, saturation) * 1e5) / 1e5,
    workedOut('wood-handbook', `form of Table 13-5 from ${shrinkPercent} % shrinkage${saturated}`),
  );
}
