import { forceWeight, type Newtons, poundsForce } from '../measure/force.js';
import { toInches } from '../measure/inch.js';
import type { Kilograms, Mm } from '../measure/quantities.js';
import { atMost, lessThan } from '../measure/tolerance.js';
import { LOAD_TIME_FACTOR, type LoadTime } from './design-factors-nds.js';
import { gaugeNumbered, shank } from './gauges.js';
import { type Sourced, sourced } from './sourced.js';
import { recalled, seen } from './sources.js';
import {
  bendingYield,
  dowelBearing,
  isThinDowel,
  singleShear,
  type YieldMode,
} from './yield-model.js';

/** A driven wood screw and the wood round it. */
export type HeldScrew = {
  readonly gauge: number;
  /** Wood under the head, and length in the board with the point. */
  readonly through: Mm;
  readonly bite: Mm;
  /** Oven-dry gravity of either board. */
  readonly sideGravity: number;
  readonly mainGravity: number;
  readonly grain: 'side' | 'end';
  readonly wet: boolean;
  readonly time: LoadTime;
};

export const SCREW_WET_FACTOR: Sourced<number> = sourced(
  0.7,
  recalled('nds', 'Table 11.3.3, CM for screws in service above 19 % moisture'),
);
export const END_GRAIN_SIDEWAYS: Sourced<number> = sourced(0.67, recalled('nds', '12.5.2, Ceg'));
export const END_GRAIN_PULL: Sourced<number> = sourced(
  0,
  seen('civil-formulas', 'wood screws are not loaded in withdrawal from end grain'),
);
const LEAST_BITE = 6;
const FULL_BITE = 10;
export const BITE_FACTOR_SOURCE = recalled(
  'nds',
  '12.1.5.6 and Table 12L footnote: nothing under 6 D, p / 10D up to 10 D',
);

export type Sideways = {
  readonly each: Kilograms;
  readonly mode: YieldMode;
  /** Share of the full value for the bite: 1 from 10 diameters on, 0 under 6. */
  readonly biteFactor: number;
};

/**
 * Share of the full sideways value for a bite: none under 6 diameters, p / 10D between, 1 from 10 on.
 * @example penetrationFactor(inches(1.5), 10) // 0.79
 */
export function penetrationFactor(bite: Mm, gauge: number): number {
  const diameters = bite / shank(gauge);
  if (lessThan(diameters, LEAST_BITE)) return 0;
  return atMost(FULL_BITE, diameters) ? 1 : diameters / FULL_BITE;
}

/**
 * What one screw may carry sideways by the NDS: yield equations at a bite of 10 diameters, scaled for
 * a shorter one, times the factors for wet wood, end grain and load time. Undefined for a gauge whose
 * root diameter is on no strength table.
 * @example No. 10, 1-1/2 in into 1-1/2 in of Douglas fir, dry: 92 lb
 */
export function screwSideways(screw: HeldScrew): Sideways | undefined {
  const root = gaugeNumbered(screw.gauge)?.rootForStrength;
  if (root === undefined || !isThinDowel(root.value)) return undefined;
  const nominal = shank(screw.gauge);
  const biteFactor = penetrationFactor(screw.bite, screw.gauge);
  const full = singleShear({
    diameter: root.value,
    side: screw.through,
    main: nominal * FULL_BITE,
    sideBearing: dowelBearing(screw.sideGravity),
    mainBearing: dowelBearing(screw.mainGravity),
    bendingYield: bendingYield(nominal),
  });
  const grain = screw.grain === 'end' ? END_GRAIN_SIDEWAYS.value : 1;
  const force = full.value * biteFactor * grain * placeFactor(screw);
  return { each: forceWeight(force), mode: full.governing, biteFactor };
}

/** Allowable pull on a screw: 2850 G^2 D pounds on an inch of thread in side grain. */
const ALLOWABLE = 2850;

export const PULL_SOURCE = seen('screw-withdrawal', '2850 G^2 D, lb for an inch of thread');

/**
 * Allowable pull on an inch of thread, dry, side grain, as a force.
 * @example withdrawalPerInch(0.45, 10) // 488 N: 109.7 lb
 */
export function withdrawalPerInch(gravity: number, gauge: number): Newtons {
  return poundsForce(ALLOWABLE * gravity ** 2 * toInches(shank(gauge)));
}

/**
 * What one screw may hold against being pulled out; nothing in end grain. `thread` is the threaded
 * length in the board with the point.
 * @example No. 10, 1-1/2 in of thread in redwood, wet: 78 lb
 */
export function screwPull(screw: Omit<HeldScrew, 'through' | 'sideGravity'>): Kilograms {
  if (screw.grain === 'end') return END_GRAIN_PULL.value;
  const force = withdrawalPerInch(screw.mainGravity, screw.gauge) * toInches(screw.bite);
  return forceWeight(force * placeFactor(screw));
}

function placeFactor({ wet, time }: Pick<HeldScrew, 'wet' | 'time'>): number {
  return (wet ? SCREW_WET_FACTOR.value : 1) * LOAD_TIME_FACTOR[time].value;
}

/**
 * How many screws a load needs, or undefined when one carries nothing.
 * @example screwsNeeded(pounds(250), pounds(64)) // 4
 */
export function screwsNeeded(load: Kilograms, each: Kilograms): number | undefined {
  return each <= 0 ? undefined : Math.ceil(load / each - 1e-9);
}
