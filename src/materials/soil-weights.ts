import type { CubicMm, Kilograms, Mm } from '../measure/quantities.js';
import { type Sourced, sourced } from './sourced.js';
import { practice, seen } from './sources.js';
import { CUBIC_METER, type Density, perCubicFoot } from './wood-density.js';

/** Kilograms in a cubic meter, from light to heavy; one number where the page prints one. */
export type SoilWeight = Sourced<{ readonly from: Density; readonly to: Density }>;

const pages = (place: string) => seen('soil-weights', place);
const dirt = (place: string) => seen('soil-densities', place);

function weight(from: number, to: number, source: ReturnType<typeof seen>): SoilWeight {
  return sourced({ from: perCubicFoot(from), to: perCubicFoot(to) }, source);
}

/** What fills planters and stands beside them, by how wet it is. */
export const SOIL_WEIGHTS = {
  'potting-mix-dry': weight(15, 30, pages('peat or coir potting mix, dry')),
  'potting-mix-wet': weight(40, 60, pages('peat or coir potting mix, fully watered')),
  'potting-soil-moist': weight(75, 85, pages('moist potting soil, heavy estimate')),
  'pine-bark-dry': weight(13.7, 13.7, pages('pine bark, dry')),
  'earth-loose': weight(75, 75, dirt('loose earth')),
  'dirt-dry': weight(76, 76, dirt('dirt, loose and dry')),
  'dirt-moist': weight(78, 78, dirt('dirt, loose and moist')),
  loam: weight(80, 80, dirt('loam')),
  'topsoil-average': weight(100, 100, pages('topsoil, average')),
  'earth-rammed': weight(100, 100, dirt('rammed earth')),
  'clay-wet': weight(110, 110, dirt('wet clay')),
  'sand-wet': weight(119, 119, dirt('wet sand')),
  'gravel-wet': weight(125, 125, dirt('wet gravel')),
  'garden-soil-soaked': weight(110, 125, practice('soaked garden soil, between wet clay and sand')),
  water: weight(62.4, 62.4, pages('water')),
} as const satisfies Record<string, SoilWeight>;

export type SoilId = keyof typeof SOIL_WEIGHTS;

/**
 * Weight of a space filled with it, light and heavy.
 * @example soilWeight(cubicFeet(2), 'potting-soil-moist') // 68 to 77 kg: 150 to 170 lb
 */
export function soilWeight(
  space: CubicMm,
  soil: SoilId,
): { readonly from: Kilograms; readonly to: Kilograms } {
  const { from, to } = SOIL_WEIGHTS[soil].value;
  const cubicMeters = space / CUBIC_METER;
  return { from: from * cubicMeters, to: to * cubicMeters };
}

/** Deepest that a fill of this weight may stand so that its own area carries no more than a limit. */
export function deepestFill(limitKgPerSquareMeter: number, density: Density): Mm {
  return (limitKgPerSquareMeter / density) * METER;
}

const METER: Mm = 1000;
