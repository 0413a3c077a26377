import type { Source } from '../measure/figure.js';
import type { Megapascals } from '../measure/stress.js';
import { seen } from './sources.js';
import type { Density } from './wood-density.js';

/** Characteristic values of a strength class, in N/mm2. */
export type ClassValues = {
  readonly kind: 'en';
  readonly name: string;
  /** Bending, tension and compression along the grain, compression across it, shear. */
  readonly bending: Megapascals;
  readonly tension: Megapascals;
  readonly along: Megapascals;
  readonly across: Megapascals;
  readonly shear: Megapascals;
  /** Mean stiffness along the grain, which sag is worked out with. */
  readonly stiffness: Megapascals;
  readonly stiffnessLow: Megapascals;
  readonly densityLow: Density;
  readonly density: Density;
  readonly source: Source;
};

/** Class; fm, ft, fc along, fc across, fv; E mean, E low; density low, density mean. */
const ROWS = [
  ['C14', 14, 7.2, 16, 2.0, 3.0, 7000, 4700, 290, 350],
  ['C16', 16, 8.5, 17, 2.2, 3.2, 8000, 5400, 310, 370],
  ['C18', 18, 10, 18, 2.2, 3.4, 9000, 6000, 320, 380],
  ['C20', 20, 11.5, 19, 2.3, 3.6, 9500, 6400, 330, 400],
  ['C24', 24, 14.5, 21, 2.5, 4.0, 11000, 7400, 350, 420],
  ['C30', 30, 19, 24, 2.7, 4.0, 12000, 8000, 380, 460],
  ['D18', 18, 11, 18, 4.8, 3.5, 9500, 8000, 475, 570],
  ['D24', 24, 14, 21, 4.9, 3.7, 10000, 8400, 485, 580],
  ['D30', 30, 18, 24, 5.3, 3.9, 11000, 9200, 530, 640],
  ['D35', 35, 21, 25, 5.4, 4.1, 12000, 10100, 540, 650],
  ['D40', 40, 24, 27, 5.5, 4.2, 13000, 10900, 550, 660],
  ['D50', 50, 30, 30, 6.2, 4.5, 14000, 11800, 620, 740],
  ['D60', 60, 36, 33, 10.5, 4.8, 17000, 14300, 700, 840],
  ['D70', 70, 42, 36, 12.0, 5.0, 20000, 16800, 800, 960],
] as const;

/** Solid timber: EN 338:2016, Table 1. C classes are softwoods, D classes hardwoods. */
export const STRENGTH_CLASSES: readonly ClassValues[] = ROWS.map(
  ([name, bending, tension, along, across, shear, stiffness, low, densityLow, density]) => ({
    kind: 'en',
    name,
    bending,
    tension,
    along,
    across,
    shear,
    stiffness,
    stiffnessLow: low,
    densityLow,
    density,
    source: seen('vademecum', `EN 338:2016 Table 1, ${name}`),
  }),
);

/**
 * The class of this name, or undefined when it is not kept here.
 * @example strengthClass('C24')?.bending // 24 N/mm2
 */
export function strengthClass(name: string): ClassValues | undefined {
  return STRENGTH_CLASSES.find(row => row.name === name);
}
