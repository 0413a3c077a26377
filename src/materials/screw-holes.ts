import type { Source } from '../measure/figure.js';
import type { Mm } from '../measure/quantities.js';
import { type Drill, drillOf, nearestDrill } from './drill-sizes.js';
import { type Gauge, gaugeNumbered } from './gauges.js';
import type { Sourced } from './sourced.js';
import { practice, recalled, seen, workedOut } from './sources.js';
import type { Species } from './species.js';

/** A hole by its diameter and by the drill that makes it, "7/64 in". */
export type Hole = Sourced<Mm> & { readonly drill: string };

/** The drills for one screw. */
export type ScrewHoles = {
  /** In the far piece, for the thread. */
  readonly pilot: Hole;
  /** Through the near piece, so that the thread does not hold the pieces apart. */
  readonly clearance: Hole;
  /** So that a flat head sits flush. */
  readonly countersink: { readonly diameter: Sourced<Mm>; readonly depth: Sourced<Mm> };
};

/**
 * A wood that wants the pilot as large as the thread root: gravity 0.6 or more (design text), and
 * every hardwood (shop boring rule). Softer woods take 7/8 of the root.
 */
const DENSE_GRAVITY = 0.6;
const SOFT_SHARE = 7 / 8;

/** Decking woods as dense as ipe move enough to shear a tightly held screw. */
const VERY_DENSE_GRAVITY = 0.8;
const ROOM_TO_MOVE: Mm = 1;

const COUNTERSINK_DEGREES = 82;

/** Clearance drills by gauge in 64ths of an inch. */
const CLEARANCE = new Map([
  [6, 9],
  [7, 10],
  [8, 11],
  [9, 12],
  [10, 12],
  [12, 14],
  [14, 16],
  [16, 17],
]);

/**
 * Pilot, clearance and countersink for a gauge in a wood; undefined for a gauge that the chart does
 * not bore. One chart is followed throughout: pilots come from the boring chart's own average root,
 * never from the thicker root that strength tables print, and in softwood the rule gives that
 * chart's working column. Clearance is the boatbuilding plate's column.
 * @example screwHoles(10, redwood)?.pilot.drill // '7/64 in', with '3/16 in' clearance
 */
export function screwHoles(
  gauge: number,
  wood: Pick<Species, 'gravity' | 'kind'>,
): ScrewHoles | undefined {
  const row = gaugeNumbered(gauge);
  const root = row?.rootForBoring;
  const clearance64 = CLEARANCE.get(gauge);
  if (row === undefined || root === undefined || clearance64 === undefined) return undefined;
  const clearance = clearanceHole(row, clearance64, wood.gravity.value);
  return {
    pilot: pilotHole(root.value, isDense(wood)),
    clearance,
    countersink: countersink(row, clearance.value),
  };
}

/** True when the wood wants a pilot of the full root diameter. */
export function isDense(wood: Pick<Species, 'gravity' | 'kind'>): boolean {
  return wood.kind === 'hardwood' || wood.gravity.value >= DENSE_GRAVITY;
}

function pilotHole(root: Mm, dense: boolean): Hole {
  const drill = nearestDrill(dense ? root : root * SOFT_SHARE);
  const source = dense
    ? workedOut('boring-chart', 'the root diameter, for hardwood and dense wood')
    : workedOut('boring-chart', '7/8 of the root diameter: its working softwood column');
  return holeOf(drill, source);
}

function clearanceHole(row: Gauge, clearance64: number, gravity: number): Hole {
  if (gravity >= VERY_DENSE_GRAVITY) {
    const drill = nearestDrill(row.shank.value + ROOM_TO_MOVE);
    const source = practice('very dense decking wood: 1 mm over the shank, so that it can move');
    return holeOf(drill, source);
  }
  const drill = drillOf(clearance64);
  return holeOf(drill, seen('boring-plate', 'clearance column'));
}

function holeOf({ diameter, drill }: Drill, source: Source): Hole {
  return { value: diameter, drill, source };
}

function countersink(row: Gauge, hole: Mm): ScrewHoles['countersink'] {
  const slope = 2 * Math.tan(((COUNTERSINK_DEGREES / 2) * Math.PI) / 180);
  const depth = Math.max(0, (row.head.value - hole) / slope);
  return {
    diameter: row.head,
    depth: {
      value: depth,
      source: workedOut('asme-b18-6-1', `cone of ${COUNTERSINK_DEGREES} degrees over the hole`),
    },
  };
}

/** Where the choice between softwood and dense-wood holes comes from. */
export const HOLE_SOURCES = [
  seen('design-text', 'gravity 0.6 or more: hole of the root diameter; less dense, 7/8 of it'),
  seen('shop-boring', 'hardwood: pilot of the root diameter'),
  recalled('asme-b18-6-1', 'flat heads of 82 degrees'),
];
