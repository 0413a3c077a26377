import { SIXTEENTHS } from '../measure/displays.js';
import type { Source } from '../measure/figure.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { atMost, lessThan } from '../measure/tolerance.js';
import {
  aimedBite,
  LEAST_COVER,
  leastBite,
  lengthCap,
  type ScrewJoint,
  smallestBite,
  USUAL_COVER,
} from './screw-bite.js';
import { isDense, type ScrewHoles, screwHoles } from './screw-holes.js';
import { stockLengths } from './screw-lengths.js';
import { becauseChosen, becauseNone, notesFor, suggestionFor } from './screw-words.js';
import { recalled } from './sources.js';

export type ScrewChoice = {
  readonly kind: 'screw';
  readonly gauge: number;
  readonly length: Mm;
  /** How far the point goes into the second piece. */
  readonly bite: Mm;
  /** Wood left beyond the point. */
  readonly cover: Mm;
  /** True when the bite is less than it should be, though not so little that the screw counts for nothing. */
  readonly short: boolean;
  readonly endGrain: boolean;
  /** True when the pilot is drilled to the full root, as dense wood wants. */
  readonly dense: boolean;
  readonly holes: ScrewHoles;
  readonly because: string;
  readonly source: Source;
  readonly notes: readonly string[];
};

export type NoScrew = {
  readonly kind: 'no-screw';
  readonly gauge: number;
  readonly why: 'not-sold-that-long' | 'comes-through';
  /** Shortest length that would hold as it should. */
  readonly needed: Mm;
  /** Longest length that stays inside the wood. */
  readonly cap: Mm;
  readonly because: string;
  readonly suggestion: string;
  readonly source: Source;
};

/** What one try at a gauge found. */
export type Fitting = {
  readonly gauge: number;
  readonly length: Mm;
  readonly least: Mm;
  readonly short: boolean;
};

/** Below this thickness under the head a No. 10 is more likely to split the piece. Common practice. */
const THIN_PIECE = inches(1 + 1 / 4);

const RULES = recalled('nds', '12.1.5.6 and Table 12L footnote: 6 and 10 diameters of bite');

/**
 * The wood screw for a joint, or why there is none. A No. 10, or a No. 8 under 1-1/4 in of wood, in
 * the stock length nearest to a bite of 10 diameters; a lighter gauge where that one cannot bite
 * without coming through; a short bite, marked as such, before giving up.
 * @example 1-3/4 in tongue into the end of a long post: No. 10 x 3-1/2 in, 1-3/4 in of bite
 * @example 3-1/2 in into the end of a post: none, a No. 10 would have to be 5.9 in long
 */
export function chooseScrew(
  joint: ScrewJoint,
  display: Display = SIXTEENTHS,
): ScrewChoice | NoScrew {
  const gauges = gaugesFor(joint);
  const fitting =
    firstOf(gauges, gauge => fullBite(joint, gauge)) ??
    firstOf(gauges, gauge => shortBite(joint, gauge));
  const usual = gauges[0];
  if (usual === undefined) throw new Error('a joint was offered no screw gauge');
  return fitting === undefined
    ? noScrew(joint, usual, display)
    : choiceOf(joint, fitting, { usual, display });
}

/** The gauge a joint asks for, or the usual one and the lighter ones after it. */
function gaugesFor({ through, gauge }: ScrewJoint): readonly number[] {
  if (gauge !== undefined) return [gauge];
  return lessThan(through, THIN_PIECE) ? [8, 6] : [10, 8, 6];
}

function fullBite(joint: ScrewJoint, gauge: number): Fitting | undefined {
  const least = leastBite(joint, gauge);
  const aim = joint.through + aimedBite(joint, gauge);
  const length = firstOf([USUAL_COVER, LEAST_COVER], cover =>
    nearest(lengthsBetween(gauge, joint.through + least, lengthCap(joint, cover)), aim),
  );
  return length === undefined ? undefined : { gauge, length, least, short: false };
}

function shortBite(joint: ScrewJoint, gauge: number): Fitting | undefined {
  const smallest = smallestBite(joint, gauge);
  const length = firstOf([USUAL_COVER, LEAST_COVER], cover =>
    lengthsBetween(gauge, joint.through + smallest, lengthCap(joint, cover)).at(-1),
  );
  if (length === undefined) return undefined;
  return { gauge, length, least: leastBite(joint, gauge), short: true };
}

function lengthsBetween(gauge: number, least: Mm, most: Mm): readonly Mm[] {
  return stockLengths(gauge).filter(length => atMost(least, length) && atMost(length, most));
}

/** The length nearest to the aim; of two as near, the longer. */
function nearest(lengths: readonly Mm[], aim: Mm): Mm | undefined {
  return [...lengths].sort((a, b) => Math.abs(a - aim) - Math.abs(b - aim) || b - a)[0];
}

function firstOf<In, Out>(
  list: readonly In[],
  find: (item: In) => Out | undefined,
): Out | undefined {
  for (const item of list) {
    const found = find(item);
    if (found !== undefined) return found;
  }
  return undefined;
}

function choiceOf(
  joint: ScrewJoint,
  fitting: Fitting,
  { usual, display }: { readonly usual: number; readonly display: Display },
): ScrewChoice {
  const { gauge, length, short } = fitting;
  const holes = screwHoles(gauge, joint.wood);
  if (holes === undefined) throw new Error(`no boring chart row for a No. ${gauge} that is sold`);
  return {
    kind: 'screw',
    gauge,
    length,
    bite: length - joint.through,
    cover: joint.through + joint.into - length,
    short,
    endGrain: joint.grain === 'end',
    dense: isDense(joint.wood),
    holes,
    because: becauseChosen(joint, fitting, display),
    source: RULES,
    notes: notesFor(joint, fitting, { usual, display }),
  };
}

function noScrew(joint: ScrewJoint, gauge: number, display: Display): NoScrew {
  const needed = joint.through + leastBite(joint, gauge);
  const cap = lengthCap(joint, LEAST_COVER);
  const longEnough = stockLengths(gauge).some(length => atMost(needed, length));
  const why = longEnough ? 'comes-through' : 'not-sold-that-long';
  return {
    kind: 'no-screw',
    gauge,
    why,
    needed,
    cap,
    because: becauseNone({ gauge, why, needed, cap }, display),
    suggestion: suggestionFor(why),
    source: RULES,
  };
}
