import type { Newtons } from '../measure/force.js';
import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { type Megapascals, psi } from '../measure/stress.js';
import { atMost } from '../measure/tolerance.js';
import { recalled } from './sources.js';

/**
 * How a screw or nail between two boards gives way: one of the boards crushes (Im the one with the
 * point, Is the one under the head), both crush and the screw turns (II), the screw bends once (IIIm,
 * IIIs) or twice (IV).
 */
export type YieldMode = 'Im' | 'Is' | 'II' | 'IIIm' | 'IIIs' | 'IV';

export type SingleShear = {
  /** Root diameter where threads cross the joint. */
  readonly diameter: Mm;
  /** Length in the board under the head, and in the board with the point. */
  readonly side: Mm;
  readonly main: Mm;
  readonly sideBearing: Megapascals;
  readonly mainBearing: Megapascals;
  readonly bendingYield: Megapascals;
};

export type YieldResult = {
  readonly modes: Readonly<Record<YieldMode, Newtons>>;
  readonly governing: YieldMode;
  readonly value: Newtons;
};

export const YIELD_SOURCE = recalled('nds', 'Table 12.3.1A and B, yield limit equations');
export const BEARING_SOURCE = recalled('nds', 'Table 12.3.3, dowel bearing strength');
export const BENDING_YIELD_SOURCE = recalled('nds', 'Appendix I, bending yield strength');

/** Up to this diameter the wood's grain direction makes no difference. */
const THIN: Mm = inches(0.25);

/**
 * How hard wood presses back on a thin screw or nail, from its gravity: 16 600 G^1.84 psi.
 * @example dowelBearing(0.5) // 31.97 N/mm2: 4637 psi
 */
export function dowelBearing(gravity: number): Megapascals {
  return psi(16_600 * gravity ** 1.84);
}

/** True for the diameters that dowelBearing is written for. */
export function isThinDowel(diameter: Mm): boolean {
  return diameter < THIN;
}

/** Reduction term Rd: 2.2 up to 0.17 in of diameter, 10 D + 0.5 up to 1/4 in. */
export function reductionTerm(diameter: Mm): number {
  return atMost(diameter, inches(0.17)) ? 2.2 : (10 * diameter) / inches(1) + 0.5;
}

/** By nominal diameter up to so many inches: bending yield strength in psi. */
const BENDING_YIELD: readonly (readonly [upTo: number, strength: number])[] = [
  [0.142, 100_000],
  [0.177, 90_000],
  [0.236, 80_000],
  [0.273, 70_000],
  [0.344, 60_000],
];

/** How hard a steel screw of this nominal diameter is to bend: 90 000 psi for a No. 8. */
export function bendingYield(nominal: Mm): Megapascals {
  const row = BENDING_YIELD.find(([upTo]) => atMost(nominal, inches(upTo)));
  if (row === undefined) throw new Error(`no bending yield strength for ${nominal} mm`);
  return psi(row[1]);
}

/**
 * All six yield modes of a single-shear joint, before any adjustment; the least of them counts.
 * @example No. 8 through 3/4 in of redwood into redwood, 1.64 in of bite // 258 N (58 lb), mode IIIs
 */
export function singleShear(joint: SingleShear): YieldResult {
  const { diameter: d, side, main, sideBearing, mainBearing, bendingYield: fyb } = joint;
  const re = mainBearing / sideBearing;
  const rt = main / side;
  const rd = reductionTerm(d);
  const k1 =
    (Math.sqrt(re + 2 * re ** 2 * (1 + rt + rt ** 2) + rt ** 2 * re ** 3) - re * (1 + rt)) /
    (1 + re);
  const bent = (2 * fyb * d ** 2) / (3 * mainBearing);
  const k2 = -1 + Math.sqrt(2 * (1 + re) + (bent * (1 + 2 * re)) / main ** 2);
  const k3 = -1 + Math.sqrt((2 * (1 + re)) / re + (bent * (2 + re)) / side ** 2);
  const modes: Record<YieldMode, Newtons> = {
    Im: (d * main * mainBearing) / rd,
    Is: (d * side * sideBearing) / rd,
    II: (k1 * d * side * sideBearing) / rd,
    IIIm: (k2 * d * main * mainBearing) / ((1 + 2 * re) * rd),
    IIIs: (k3 * d * side * mainBearing) / ((2 + re) * rd),
    IV: (d ** 2 / rd) * Math.sqrt((2 * mainBearing * fyb) / (3 * (1 + re))),
  };
  const governing = (Object.keys(modes) as YieldMode[]).reduce((least, mode) =>
    modes[mode] < modes[least] ? mode : least,
  );
  return { modes, governing, value: modes[governing] };
}
