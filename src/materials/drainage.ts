import { inches } from '../measure/inch.js';
import type { Mm, SquareMm } from '../measure/quantities.js';
import { SAME } from '../measure/tolerance.js';
import { sourced } from './sourced.js';
import { practice, seen } from './sources.js';

export const HOLE_PITCH = sourced(
  { least: inches(6), most: inches(8) },
  seen('planter-drainage', 'boxes under 4 ft: a grid of 6 to 8 in'),
);
export const HOLE_DIAMETER = sourced(
  { least: inches(1 / 4), most: inches(1 / 2) },
  seen('planter-drainage', '1/4 to 1/2 in; larger ones clog less'),
);
/** Open area as a share of the floor. */
export const OPEN_SHARE = sourced(
  { least: 0.005, most: 0.01 },
  practice('0.5 to 1 % of the floor open'),
);
export const LEAST_HOLES = sourced(4, practice('at least four holes'));

export type DrainGrid = {
  readonly along: number;
  readonly across: number;
  readonly count: number;
  /** Centers from one end and from one side, half a pitch in from each. */
  readonly alongMarks: readonly Mm[];
  readonly acrossMarks: readonly Mm[];
  readonly open: SquareMm;
  /** Of the floor. */
  readonly openShare: number;
};

/**
 * Holes in the floor of a planter, evenly spread.
 * @example drainGrid(inches(36), inches(12), inches(1 / 2)) // 6 x 2 holes, 0.55 % of the floor
 */
export function drainGrid(length: Mm, width: Mm, hole: Mm): DrainGrid {
  const across = holesOver(width);
  const along = Math.max(holesOver(length), Math.ceil(LEAST_HOLES.value / across));
  const count = along * across;
  const open = count * Math.PI * (hole / 2) ** 2;
  return {
    along,
    across,
    count,
    alongMarks: marks(length, along),
    acrossMarks: marks(width, across),
    open,
    openShare: open / (length * width),
  };
}

/** As many as stand no closer than the least pitch; one more where that would leave too wide a one. */
function holesOver(length: Mm): number {
  const { least, most } = HOLE_PITCH.value;
  const close = Math.max(1, Math.floor((length + SAME) / least));
  return length / close > most + SAME ? close + 1 : close;
}

function marks(length: Mm, count: number): readonly Mm[] {
  return Array.from({ length: count }, (_, at) => ((at + 0.5) * length) / count);
}
