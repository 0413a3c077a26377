import { squareMeters } from '../measure/area.js';
import { type KgPerSquareMeter, spread } from '../measure/floor-load.js';
import type { Kilograms, SquareMm } from '../measure/quantities.js';
import { DECK_LIVE_LOAD } from './loads.js';

/** What always has to be said where a floor is not the ground. */
export const FLOOR_WORDS =
  'A balcony, a roof, a deck off the ground or one whose plans nobody has is for its owner, the local building code and a licensed engineer to judge; this sum is not their answer.';
/** And where people could fall. */
export const GUARD_WORDS =
  'A seat beside a railing makes the railing easy to climb: ask the local code how far off it has to stand. Nothing here checks a railing.';

export type FloorCheck = {
  /** Weight spread over what the piece takes up. */
  readonly spread: KgPerSquareMeter;
  readonly limit: KgPerSquareMeter;
  /** Share of the limit that is used. */
  readonly share: number;
};

/**
 * Weight on the area it stands on, against what the floor may carry: the limit that its owner names,
 * or 40 lb/sq ft, which decks are usually meant for, people included.
 * @example floorCheck(pounds(200), squareInches(280)).share // 2.57: 103 lb/sq ft where 40 is usual
 */
export function floorCheck(
  weight: Kilograms,
  footprint: SquareMm,
  limit: KgPerSquareMeter = DECK_LIVE_LOAD.value,
): FloorCheck {
  const on = spread(weight, footprint);
  return { spread: on, limit, share: on / limit };
}

/**
 * How many pieces of a weight a deck may take when so much of its load is kept for people.
 * @example piecesOnDeck({ area: squareFeet(100), each: pounds(200), people: 0.5 }) // 10
 */
export function piecesOnDeck({
  area,
  each,
  people,
  limit = DECK_LIVE_LOAD.value,
}: {
  readonly area: SquareMm;
  readonly each: Kilograms;
  readonly people: number;
  readonly limit?: KgPerSquareMeter;
}): number {
  const total = (limit * area * (1 - people)) / squareMeters(1);
  return Math.floor(total / each + 1e-9);
}

/** Feet that carry when it stands level, and when the floor is uneven and it rocks on two. */
export const ROCKING_FEET = 2;

/**
 * Weight on one foot: shared by all, and when it rocks on two.
 * @example footLoads(pounds(400), 4) // 100 lb each, 200 lb when it rocks
 */
export function footLoads(
  weight: Kilograms,
  feet: number,
): { readonly level: Kilograms; readonly rocking: Kilograms } {
  return { level: weight / feet, rocking: weight / Math.min(feet, ROCKING_FEET) };
}
