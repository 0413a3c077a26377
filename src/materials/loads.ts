import { squareFeet, squareMeters } from '../measure/area.js';
import type { CubicMm, Kilograms, SquareMm } from '../measure/quantities.js';
import { pounds } from '../measure/weight.js';
import { type Sourced, sourced } from './sourced.js';
import { practice, recalled, seen } from './sources.js';
import { CUBIC_METER, type Density, perCubicFoot } from './wood-density.js';

/** Soaked fill by kind. The heavy figures are for judging what stands below. */
export const FILLS = {
  'potting-mix': {
    planned: sourced(perCubicFoot(65), practice('soaked potting mix, 50 to 80 lb/ft3')),
    heavy: sourced(perCubicFoot(85), seen('soil-weights', 'moist potting soil, 75 to 85 lb/ft3')),
  },
  'garden-soil': {
    planned: sourced(perCubicFoot(110), practice('soaked garden soil, 110 to 125 lb/ft3')),
    heavy: sourced(perCubicFoot(125), practice('soaked garden soil, 110 to 125 lb/ft3')),
  },
} as const satisfies Record<string, { planned: Sourced<Density>; heavy: Sourced<Density> }>;

export type FillId = keyof typeof FILLS;

/**
 * Weight of a soaked fill, as planned and as heavy as it gets.
 * @example fillWeight(cubicFeet(2.5), 'potting-mix').planned // 73.7 kg: 162 lb
 */
export function fillWeight(
  space: CubicMm,
  fill: FillId,
): { readonly planned: Kilograms; readonly heavy: Kilograms } {
  const { planned, heavy } = FILLS[fill];
  const cubicMeters = space / CUBIC_METER;
  return { planned: planned.value * cubicMeters, heavy: heavy.value * cubicMeters };
}

/** One person on a seat, at any point of it, down or sideways: 250 lbf. */
export const PERSON: Sourced<Kilograms> = sourced(
  pounds(250),
  seen('ada-903', '903.6, structural strength of benches'),
);

/** Kilograms on a square meter that a deck is usually meant to carry, people included: 40 lb/ft2. */
export const DECK_LIVE_LOAD: Sourced<number> = sourced(
  (pounds(40) / squareFeet(1)) * squareMeters(1),
  seen('deck-loads', '40 lb/ft2; some places ask 60 for balconies'),
);

/** What a single stair tread has to carry on 4 sq in: a yardstick for what stands on one small foot. */
export const STEP_LOAD: Sourced<Kilograms> = sourced(
  pounds(300),
  seen('deck-loads', 'stair treads, 300 lb on 4 sq in'),
);

/** What a deck's own boards and joists weigh: 10 lb/ft2. */
export const DECK_DEAD_LOAD: Sourced<number> = sourced(
  (pounds(10) / squareFeet(1)) * squareMeters(1),
  recalled('deck-loads', 'R507 design basis, 10 lb/ft2'),
);

/**
 * How many times the usual deck load lies under a footprint; over 1 is worth a second look.
 * @example deckShare(pounds(200), squareInches(280)) // 2.57: 103 lb/ft2 where 40 is usual
 */
export function deckShare(weight: Kilograms, footprint: SquareMm): number {
  return (weight / footprint) * squareMeters(1) * (1 / DECK_LIVE_LOAD.value);
}
