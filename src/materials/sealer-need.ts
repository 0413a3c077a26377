import type { Display, Milliliters, SquareMm } from '../measure/quantities.js';
import { gallons } from '../measure/volume.js';
import { type ContainerSize, type Containers, containersFor } from './containers.js';
import { type SealerId, sealerOf } from './sealer.js';
import { practice } from './sources.js';

/** What is to be coated, and how. */
export type SealerJob = {
  /** Every face and edge that is not end grain. */
  readonly faces: SquareMm;
  readonly endGrain: SquareMm;
  /** Sawn or weathered, not planed. */
  readonly rough: boolean;
  readonly coats: number;
  readonly kind: SealerId;
  readonly method: 'brush' | 'spray';
};

export type SealerNeed = {
  /** What stays in and on the wood. */
  readonly onWoodMilliliters: Milliliters;
  /** With what the brush keeps or the wind takes. */
  readonly milliliters: Milliliters;
  readonly cans: Readonly<Record<Display['system'], readonly Containers[]>>;
};

export const CANS: Readonly<Record<Display['system'], readonly ContainerSize[]>> = {
  inch: [
    { name: 'quart', holds: gallons(1 / 4) },
    { name: 'gallon', holds: gallons(1) },
  ],
  metric: [
    { name: '750 ml can', holds: 750 },
    { name: '1 l can', holds: 1000 },
    { name: '2.5 l can', holds: 2500 },
    { name: '5 l can', holds: 5000 },
  ],
};

export const SEALER_NEED_SOURCE = practice(
  'end grain counted three times; later coats reach 1.4 times as far; 10 % stays in the brush, 20 % is lost from a pump sprayer; usual can sizes',
);

const END_GRAIN_TIMES = 3;
const LATER_COATS_REACH = 1.4;
const LOST = { brush: 0.1, spray: 0.2 } as const;

/**
 * Sealer for the faces and ends that stay open to the weather, and the cans to buy.
 * @example 800 sq ft of planed face, one coat, brushed: 3.2 gal on the wood, 3.52 gal, 4 gallons
 */
export function sealerNeed(job: SealerJob): SealerNeed {
  const sealer = sealerOf(job.kind);
  const reach = (job.rough ? sealer.rough : sealer.smooth).value;
  const area = job.faces + job.endGrain * END_GRAIN_TIMES;
  const coats = job.coats < 1 ? 0 : 1 + (job.coats - 1) / LATER_COATS_REACH;
  const onWood = (area * coats) / reach;
  const milliliters = onWood * (1 + LOST[job.method]);
  return {
    onWoodMilliliters: onWood,
    milliliters,
    cans: {
      inch: containersFor(milliliters, CANS.inch),
      metric: containersFor(milliliters, CANS.metric),
    },
  };
}
