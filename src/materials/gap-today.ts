import type { Source } from '../measure/figure.js';
import type { Mm } from '../measure/quantities.js';
import { atMost, lessThan } from '../measure/tolerance.js';
import type { BoardYear } from './board-year.js';
import { SEATING } from './seating.js';
import { sourced } from './sourced.js';
import { practice } from './sources.js';

/** What has to be left in the wettest month. */
export const DRAIN_GAP = sourced<Mm>(3, practice('3 mm left when wet lets rain and dirt through'));

/** A round step beyond the gaps that may hold a finger. */
const BEYOND_FINGERS: Mm = 1;

export type GapTrouble =
  | { readonly kind: 'closes' }
  | { readonly kind: 'holds-water' }
  | { readonly kind: 'finger' | 'head'; readonly source: Source };

/** A gap between boards that are each held in the middle, so that every gap takes one board's change. */
export type YearOfGap = {
  readonly now: Mm;
  /** In the wettest time. Negative: the boards push each other by so much. */
  readonly wet: Mm;
  readonly dry: Mm;
  readonly troubles: readonly GapTrouble[];
};

/**
 * A gap set today, through the year of the boards beside it.
 * @example yearOfGap(inches(1 / 4), year) // Douglas-fir 5-3/4 in, 8 to 14 %: 0.158 in when wet
 */
export function yearOfGap(now: Mm, year: BoardYear): YearOfGap {
  const wet = now - year.swell;
  const dry = now + year.shrink;
  return { now, wet, dry, troubles: troublesOf(wet, dry) };
}

export type GapToday = {
  /** The gap to set. */
  readonly set: YearOfGap;
  /** Between these it neither closes too far nor opens too far. */
  readonly least: Mm;
  readonly most: Mm;
  /** `narrow` stays below the gaps that hold a finger, `wide` above them. */
  readonly kind: 'narrow' | 'wide';
  /** The narrowest gap that still drains when wet; the same as `least` for a narrow one. */
  readonly drains: YearOfGap;
};

/**
 * The gap to set today: between one that drains in the wettest month and one that holds no finger in
 * the driest, the middle of the two. Boards that move too much for that get one wider than fingers all
 * year. A board wetter today than it will ever be may be set touching.
 */
export function gapToday(year: BoardYear): GapToday {
  const { fingerTrap, headTrap } = SEATING;
  const least = Math.max(0, DRAIN_GAP.value + year.swell);
  const drains = yearOfGap(least, year);
  const most = fingerTrap.from - year.shrink;
  if (lessThan(least, most)) {
    const set = yearOfGap((least + most) / 2, year);
    return { set, least, most, kind: 'narrow', drains };
  }
  const wide = Math.max(0, fingerTrap.to + BEYOND_FINGERS + year.swell);
  return {
    set: yearOfGap(wide, year),
    least: wide,
    most: headTrap.from - year.shrink,
    kind: 'wide',
    drains,
  };
}

function troublesOf(wet: Mm, dry: Mm): readonly GapTrouble[] {
  const troubles: GapTrouble[] = [];
  if (atMost(wet, 0)) troubles.push({ kind: 'closes' });
  else if (lessThan(wet, DRAIN_GAP.value)) troubles.push({ kind: 'holds-water' });
  if (passes(wet, dry, SEATING.fingerTrap))
    troubles.push({ kind: 'finger', source: SEATING.fingerTrap.source });
  if (passes(wet, dry, SEATING.headTrap))
    troubles.push({ kind: 'head', source: SEATING.headTrap.source });
  return troubles;
}

/** True when the gap is somewhere within these sizes in some month; at the very limit counts. */
function passes(wet: Mm, dry: Mm, { from, to }: { from: Mm; to: Mm }): boolean {
  return atMost(from, Math.max(wet, dry)) && atMost(Math.min(wet, dry), to);
}
