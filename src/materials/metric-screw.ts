import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import type { ScrewChoice } from './choose-screw.js';
import { shank } from './gauges.js';
import { LEAST_COVER } from './screw-bite.js';
import { type Sourced, sourced } from './sourced.js';
import { practice } from './sources.js';

/** A metric countersunk wood screw by outer thread diameter. Makers differ by a few tenths. */
type MetricSize = {
  readonly diameter: Mm;
  readonly pilotSoft: Mm;
  readonly pilotDense: Mm;
  readonly sold: readonly [Mm, Mm];
};

const SIZES: readonly MetricSize[] = [
  { diameter: 3.5, pilotSoft: 2, pilotDense: 2.5, sold: [16, 50] },
  { diameter: 4, pilotSoft: 2.5, pilotDense: 3, sold: [20, 70] },
  { diameter: 4.5, pilotSoft: 2.5, pilotDense: 3.5, sold: [25, 80] },
  { diameter: 5, pilotSoft: 3, pilotDense: 3.5, sold: [30, 120] },
  { diameter: 6, pilotSoft: 4, pilotDense: 4.5, sold: [40, 200] },
];

const LENGTHS: readonly Mm[] = [
  16, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 120, 140, 160, 180, 200,
];

export const METRIC_SOURCE = practice('usual lengths and pilots of metric wood screws');

const CLEARANCE_ROOM: Mm = 0.5;
/** A metric length this close to the inch one is taken as the same screw. */
const NEAR_ENOUGH: Mm = 8;

export type MetricScrew = {
  /** As on the box: "5.0 x 90 mm". */
  readonly name: string;
  readonly diameter: Mm;
  readonly length: Mm;
  readonly pilot: Sourced<Mm>;
  readonly clearance: Sourced<Mm>;
};

/**
 * The usual metric screw nearest to a chosen inch one, still at least 1/8 in short of the far face;
 * undefined when none of those on record comes near.
 * @example No. 10 x 3-1/2 in // '5.0 x 90 mm', pilot 3 mm in softwood
 */
export function metricScrew(choice: ScrewChoice): MetricScrew | undefined {
  const wanted = shank(choice.gauge);
  const byDiameter = [...SIZES].sort(
    (a, b) => Math.abs(a.diameter - wanted) - Math.abs(b.diameter - wanted),
  );
  for (const size of byDiameter) {
    const length = nearestLength(size, choice);
    if (length !== undefined) return screwOf(size, length, choice.dense);
  }
  return undefined;
}

function nearestLength({ sold }: MetricSize, { length, cover }: ScrewChoice): Mm | undefined {
  const longest = length + cover - LEAST_COVER;
  return LENGTHS.filter(
    metric =>
      metric >= sold[0] &&
      metric <= sold[1] &&
      atMost(metric, longest) &&
      atMost(Math.abs(metric - length), NEAR_ENOUGH),
  ).sort((a, b) => Math.abs(a - length) - Math.abs(b - length))[0];
}

function screwOf(size: MetricSize, length: Mm, dense: boolean): MetricScrew {
  return {
    name: `${size.diameter.toFixed(1)} x ${length} mm`,
    diameter: size.diameter,
    length,
    pilot: sourced(dense ? size.pilotDense : size.pilotSoft, METRIC_SOURCE),
    clearance: sourced(size.diameter + CLEARANCE_ROOM, practice('outer diameter and 0.5 mm')),
  };
}
