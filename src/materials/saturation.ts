import { type Sourced, sourced } from './sourced.js';
import { recalled, workedOut } from './sources.js';
import type { Species } from './species.js';

/** Moisture percent above which wood no longer swells, for woods without a figure of their own. */
export const SATURATION: Sourced<number> = sourced(
  30,
  recalled('wood-handbook', 'chapter 13, no moisture above 30 % counts'),
);

const OF_TWO_TABLES = workedOut(
  'wood-handbook',
  'the saturation at which Table 13-5 follows from Table 4-3',
);

/** Woods that stop swelling sooner. */
const EARLY: Readonly<Record<string, Sourced<number>>> = {
  redwood: sourced(22, OF_TWO_TABLES),
  'western-redcedar': sourced(22, OF_TWO_TABLES),
  'northern-white-cedar': sourced(22, OF_TWO_TABLES),
  iroko: sourced(23, recalled('cirad', 'iroko, fiber saturation')),
};

/** Every figure of this file, for the list of sources. */
export const SATURATIONS: readonly Sourced<number>[] = [SATURATION, ...Object.values(EARLY)];

/**
 * The moisture percent above which this wood no longer swells.
 * @example saturationOf(westernRedcedar).value // 22
 */
export function saturationOf({ id }: Pick<Species, 'id'>): Sourced<number> {
  return EARLY[id] ?? SATURATION;
}
