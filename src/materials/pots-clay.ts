import { inches } from '../measure/inch.js';
import type { Pot } from './pot.js';
import { sourced } from './sourced.js';
import { recalled, seen } from './sources.js';

const MEASURED = seen('clay-column', 'measured 6 in clay pots');
const CATALOG = recalled('pot-catalogs', 'standard clay pots');

type Row = readonly [id: string, name: string, top: number, height: number];

const MEASURED_ROWS: readonly Row[] = [
  ['clay-6', 'clay pot, 6 in standard', 6.25, 5.5],
  ['clay-6-rose', 'clay rose pot, 6 in', 6.5, 7.5],
  ['clay-6-azalea', 'clay azalea pot, 6 in', 6.25, 4.25],
  ['clay-6-pan', 'clay bulb pan, 6 in', 6.62, 4.25],
  ['clay-6-cactus', 'clay cactus pan, 6 in', 6.62, 3.25],
];

const CATALOG_ROWS: readonly Row[] = [
  ['clay-4', 'clay pot, 4 in standard', 4, 4],
  ['clay-5', 'clay pot, 5 in standard', 5, 5],
  ['clay-8', 'clay pot, 8 in standard', 8, 7.5],
  ['clay-10', 'clay pot, 10 in standard', 10, 9.25],
  ['clay-12', 'clay pot, 12 in standard', 12, 11.25],
  ['clay-14', 'clay pot, 14 in standard', 14, 13],
];

/** Clay pots by their sold size; a standard one is about as high as it is wide. */
export const CLAY_POTS: readonly Pot[] = [
  ...MEASURED_ROWS.map(row => clay(row, MEASURED)),
  ...CATALOG_ROWS.map(row => clay(row, CATALOG)),
];

function clay([id, name, top, height]: Row, source: typeof MEASURED): Pot {
  return {
    id,
    name,
    shape: 'round',
    top: sourced(inches(top), source),
    height: sourced(inches(height), source),
  };
}
