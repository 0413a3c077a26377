import { toSquareMeters } from '../measure/area.js';
import type { Display, Grams, Milliliters, SquareMm } from '../measure/quantities.js';
import { fluidOunces, gallons } from '../measure/volume.js';
import { type ContainerSize, type Containers, containersFor } from './containers.js';
import { type GlueId, glueOf } from './glue.js';
import { practice } from './sources.js';

export type GlueNeed = {
  /** A film on one face of each joint and nothing lost: the least that can do. */
  readonly oneFaceMilliliters: Milliliters;
  /** Both faces brushed, and the waste. */
  readonly grams: Grams;
  readonly milliliters: Milliliters;
  readonly bottles: Readonly<Record<Display['system'], readonly Containers[]>>;
};

export const BOTTLES: Readonly<Record<Display['system'], readonly ContainerSize[]>> = {
  inch: [
    { name: '4 oz bottle', holds: fluidOunces(4) },
    { name: '8 oz bottle', holds: fluidOunces(8) },
    { name: '16 oz bottle', holds: fluidOunces(16) },
    { name: '1 gal jug', holds: gallons(1) },
  ],
  metric: [
    { name: '250 ml bottle', holds: 250 },
    { name: '500 ml bottle', holds: 500 },
    { name: '750 ml bottle', holds: 750 },
    { name: '5 l jug', holds: 5000 },
  ],
};

export const GLUE_NEED_SOURCE = practice(
  'both faces brushed at the full spread, 15 % for squeeze-out and what dries in the brush; usual bottle sizes',
);

const FACES_BRUSHED = 2;
const WASTE = 0.15;

/**
 * Glue for joints whose faces touch over this area, both faces brushed.
 * @example 14 half-laps of 3-1/2 in square, PVA Type I: 45 g, a 4 oz bottle is ample
 */
export function glueNeed(area: SquareMm, id: GlueId): GlueNeed {
  const { spread, density } = glueOf(id);
  const oneFace = toSquareMeters(area) * spread.value;
  const grams = oneFace * FACES_BRUSHED * (1 + WASTE);
  const milliliters = grams / density.value;
  return {
    oneFaceMilliliters: oneFace / density.value,
    grams,
    milliliters,
    bottles: {
      inch: containersFor(milliliters, BOTTLES.inch),
      metric: containersFor(milliliters, BOTTLES.metric),
    },
  };
}
