import type { Mm } from '../measure/quantities.js';
import { lessThan } from '../measure/tolerance.js';
import type { EvenSpacing } from './spacing.js';
import { spreadWithMargins } from './spacing-margins.js';

/**
 * Board on board: front boards with visible openings between them, and backing boards behind that reach
 * `lap` behind each neighbor.
 */
export type LappedRun = {
  readonly over: Mm;
  readonly piece: Mm;
  readonly opening: Mm;
  readonly lap: Mm;
};

export type LappedSpacing = {
  readonly fronts: EvenSpacing;
  /** Width of a backing board between two front boards: the opening and a lap at either side. */
  readonly backing: Mm;
  /** What shows of the backing between an outer front board and the end of the run. */
  readonly reveal: Mm;
  /** Width of the backing strip at an end: what shows and one lap. */
  readonly endStrip: Mm;
  /** Near edge of each backing piece from the datum, end strips and all. */
  readonly backingMarks: readonly Mm[];
  /** An end that shows less than half a front board looks like a mistake. */
  readonly narrowEnds: boolean;
};

/**
 * Seven 5-1/2 in boards with 3-1/2 in openings and 1 in laps between posts 61-1/4 in apart show 7/8 in at
 * each end, over backing strips of 1-7/8 in.
 */
export function spreadWithLaps(run: LappedRun, count: number): LappedSpacing {
  const { over, piece, opening, lap } = run;
  const fronts = spreadWithMargins({ over, piece, gap: opening }, count);
  const between = fronts.marks.slice(0, -1).map(mark => mark + piece - lap);
  const last = fronts.marks[count - 1];
  const farStrip = last === undefined ? [] : [last + piece - lap];
  return {
    fronts,
    backing: opening + 2 * lap,
    reveal: fronts.endGap,
    endStrip: fronts.endGap + lap,
    backingMarks: count === 0 ? [] : [0, ...between, ...farStrip],
    narrowEnds: lessThan(fronts.endGap, piece / 2),
  };
}
