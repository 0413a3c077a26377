import type { Part } from '../../model/part.js';
import type { Scene } from './focus.js';
import { type Held, unitsOf } from './units.js';

/**
 * What stands there and hangs together with something that the step joins: walls that are not fixed to it yet
 * lie aside. Where a step joins nothing, all that stands there.
 */
export function atHand({ bright, standing, made }: Scene, held: readonly Held[]): readonly Part[] {
  if (made.length === 0) return standing;
  const joined = new Set(made.flatMap(({ from, into }) => [from, into]));
  const units = unitsOf([...new Set([...standing, ...bright])], [...held, ...made]);
  const hangs = new Set(units.filter(unit => unit.some(({ id }) => joined.has(id))).flat());
  return standing.filter(part => hangs.has(part));
}
