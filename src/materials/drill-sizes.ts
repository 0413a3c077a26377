import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { gridSteps } from '../measure/round.js';

/** A fractional twist drill. */
export type Drill = {
  readonly diameter: Mm;
  /** As it is marked: "7/64 in". */
  readonly drill: string;
};

const DRILL_STEP = inches(1 / 64);

/**
 * The drill of a set in 64ths that is nearest to a diameter; midway goes to the larger one.
 * @example nearestDrill(inches(0.104)).drill // '7/64 in'
 */
export function nearestDrill(diameter: Mm): Drill {
  return drillOf(gridSteps(diameter, DRILL_STEP, 'nearest'));
}

/** The drill of so many 64ths: `drillOf(12)` is 3/16 in. */
export function drillOf(sixtyFourths: number): Drill {
  return { diameter: sixtyFourths * DRILL_STEP, drill: `${fraction(sixtyFourths)} in` };
}

function fraction(sixtyFourths: number): string {
  let top = sixtyFourths;
  let bottom = 64;
  while (top % 2 === 0 && bottom > 1) {
    top /= 2;
    bottom /= 2;
  }
  return bottom === 1 ? `${top}` : `${top}/${bottom}`;
}
