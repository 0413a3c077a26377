import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import type { Pot } from './pot.js';
import { sourced } from './sourced.js';
import { recalled, seen } from './sources.js';

const CATALOG = recalled('pot-catalogs', 'plastic pots in centimeters');
/** The chart gives height and width as the same number for every size and names no source. */
const CHART = seen('flower-pot-chart', 'as high as wide');

type Row = readonly [id: string, name: string, shape: Pot['shape'], top: number, height: number];

/** In centimeters. */
const METRIC_ROWS: readonly Row[] = [
  ['9cm', 'plastic pot, 9 cm square', 'square', 9, 8.7],
  ['11cm', 'plastic pot, 11 cm', 'round', 11, 9],
  ['13cm', 'plastic pot, 13 cm', 'round', 13, 11],
  ['2l', 'plastic pot, 2 l', 'round', 17, 13],
  ['3l', 'plastic pot, 3 l', 'round', 19, 15],
  ['5l', 'plastic pot, 5 l', 'round', 22.5, 18],
  ['7.5l', 'plastic pot, 7.5 l', 'round', 26, 21],
  ['10l', 'plastic pot, 10 l', 'round', 28, 22.5],
  ['15l', 'plastic pot, 15 l', 'round', 32, 26],
  ['20l', 'plastic pot, 20 l', 'round', 35, 29],
];

const CHART_INCHES = [4, 6, 8, 10, 12, 14, 18, 24] as const;

/** Plastic pots, by centimeters or liters as in Europe and by inches as in the United States. */
export const PLASTIC_POTS: readonly Pot[] = [
  ...METRIC_ROWS.map(([id, name, shape, top, height]) => ({
    id,
    name,
    shape,
    top: sourced<Mm>(top * 10, CATALOG),
    height: sourced<Mm>(height * 10, CATALOG),
  })),
  ...CHART_INCHES.map(size => ({
    id: `${size}in`,
    name: `flower pot, ${size} in`,
    shape: 'round' as const,
    top: sourced(inches(size), CHART),
    height: sourced(inches(size), CHART),
  })),
];
