import type { Milliliters } from '../measure/quantities.js';

/** A size in which something liquid is sold. */
export type ContainerSize = { readonly name: string; readonly holds: Milliliters };

export type Containers = {
  readonly size: ContainerSize;
  readonly count: number;
};

const SPILLED: Milliliters = 0.01;

/**
 * The containers to buy for an amount: as many of the largest as it fills, and the smallest one that
 * takes the rest. One larger container is preferred to several small ones. Nothing for nothing.
 * @example 3.52 gal in quarts and gallons // 4 gallons
 */
export function containersFor(
  amount: Milliliters,
  sizes: readonly ContainerSize[],
): readonly Containers[] {
  const smallestFirst = [...sizes].sort((a, b) => a.holds - b.holds);
  const largest = smallestFirst.at(-1);
  if (largest === undefined || amount <= SPILLED) return [];
  const full = Math.floor((amount + SPILLED) / largest.holds);
  const rest = amount - full * largest.holds;
  const last =
    rest > SPILLED ? smallestFirst.find(size => size.holds >= rest - SPILLED) : undefined;
  if (last === largest) return [{ size: largest, count: full + 1 }];
  const whole = full > 0 ? [{ size: largest, count: full }] : [];
  return last === undefined ? whole : [...whole, { size: last, count: 1 }];
}
