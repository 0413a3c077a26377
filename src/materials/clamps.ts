import type { Newtons } from '../measure/force.js';
import { poundsForce } from '../measure/force.js';
import { inches } from '../measure/inch.js';
import type { Mm, SquareMm } from '../measure/quantities.js';
import { type Megapascals, psi } from '../measure/stress.js';
import { SAME } from '../measure/tolerance.js';
import { type Sourced, sourced } from './sourced.js';
import { practice, seen } from './sources.js';

export type WoodHardness = 'soft' | 'medium' | 'hard';

/** Pressure that closes a joint that fits, by how hard the wood is. */
export const CLAMP_PRESSURE: Readonly<
  Record<WoodHardness, Sourced<{ readonly least: Megapascals; readonly most: Megapascals }>>
> = {
  soft: sourced(
    { least: psi(100), most: psi(150) },
    seen('pva-guide', 'softwood, pine, poplar: 100 to 150 psi'),
  ),
  medium: sourced(
    { least: psi(150), most: psi(200) },
    seen('pva-guide', 'cherry, soft maple: 150 to 200 psi'),
  ),
  hard: sourced(
    { least: psi(200), most: psi(300) },
    seen('pva-guide', 'oak, birch: 200 to 300 psi'),
  ),
};

/** More than this squeezes the glue out of most joints. */
export const PRESSURE_CEILING: Sourced<Megapascals> = sourced(
  psi(250),
  seen('clamp-magazine', 'ceiling for most joints, 250 psi'),
);

/** What one clamp presses with, turned as hard as usual. */
export const CLAMP_FORCE = {
  bar: sourced<Newtons>(poundsForce(1350), seen('clamp-count', 'I-beam bar clamp, 1350 lb')),
  light: sourced<Newtons>(poundsForce(420), seen('clamp-magazine', 'example clamp of 420 lb')),
} as const;

export type ClampKind = keyof typeof CLAMP_FORCE;

export const CLAMP_SPACING: Sourced<Mm> = sourced(
  inches(10),
  seen('pva-guide', 'middle of 8 to 12 in'),
);
export const WIDEST_CLAMP_SPACING: Sourced<Mm> = sourced(
  inches(12),
  seen('pva-guide', 'clamps 8 to 12 in apart'),
);
export const FIRST_CLAMP: Sourced<Mm> = sourced(
  inches(2),
  seen('pva-guide', 'first clamp 1.5 to 2 in from the end'),
);
export const SPREAD_RULE = practice(
  'pressure spreads about 45 degrees from the pad, so twice the wood and caul before the joint',
);

/** How hard to press so that the joint closes: the upper end of its range, held below the ceiling. */
export function clampPressure(wood: WoodHardness): Megapascals {
  return Math.min(CLAMP_PRESSURE[wood].value.most, PRESSURE_CEILING.value);
}

/**
 * Clamps by pressure: area x pressure / force of one, rounded up.
 * @example clampsByPressure(squareInches(27), psi(450), poundsForce(1350)) // 9
 */
export function clampsByPressure(area: SquareMm, pressure: Megapascals, force: Newtons): number {
  return roundedUp((area * pressure) / force);
}

export type ClampRow = {
  readonly joint: Mm;
  /** First clamp from each end. */
  readonly end: Mm;
  readonly spacing: Mm;
};

/**
 * Clamps by spacing along a joint: ceil((J - 2e)/s) + 1. One where two would meet in the middle.
 * @example clampsBySpacing({ joint: inches(48), end: inches(2), spacing: inches(10) }) // 6
 */
export function clampsBySpacing({ joint, end, spacing }: ClampRow): number {
  if (joint <= 2 * end + SAME) return 1;
  return roundedUp((joint - 2 * end) / spacing) + 1;
}

/**
 * How far apart clamps may stand so that their pressure meets at the joint.
 * @example spacingFor(inches(3.5), inches(0.75)) // 8-1/2 in
 */
export function spacingFor(padToJoint: Mm, caul: Mm): Mm {
  return 2 * (padToJoint + caul);
}

/** What binary arithmetic adds behind the point is no reason for another clamp. */
function roundedUp(clamps: number): number {
  return Math.max(1, Math.ceil(clamps - 1e-6));
}
