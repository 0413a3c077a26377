import type { Source } from '../measure/figure.js';
import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { practice, recalled, seen } from './sources.js';

/** A size with the limits that people and rules put on it. Infinity where nobody sets an upper one. */
export type SizeRange = { readonly from: Mm; readonly to: Mm; readonly source: Source };

/** Sizes of seats and the room around them. */
export const SEATING = {
  seatHeight: { from: inches(17), to: inches(19), source: seen('ada-903', '903.5, seat height') },
  seatHeightLow: { from: 400, to: 460, source: seen('pheasant', 'flat multi-purpose seat') },
  seatDepthTransfer: {
    from: inches(20),
    to: inches(24),
    source: seen('ada-903', '903.3, depth for people who slide over from a wheelchair'),
  },
  /** Deeper than this and small people cannot reach the backrest. */
  seatDepthWithBack: { from: 0, to: 430, source: seen('pheasant', 'seat depth at most') },
  /** From the least to the comfortable. */
  widthPerPerson: {
    from: inches(18),
    to: inches(24),
    source: practice('18 in a person at least, 24 in comfortable'),
  },
  seatLength: {
    from: inches(42),
    to: Number.POSITIVE_INFINITY,
    source: seen('ada-903', '903.3, seat length'),
  },
  walkway: {
    from: inches(36),
    to: Number.POSITIVE_INFINITY,
    source: seen('ada-903', '403, clear width of a walking surface'),
  },
  walkwayBehindSitters: {
    from: 900,
    to: 1200,
    source: practice('passing behind people who sit'),
  },
  slatGap: { from: 5, to: 8, source: practice('bench slats, 3/16 to 5/16 in') },
  deckGap: { from: 6, to: 8, source: seen('bs8579', 'usual 6 to 8 mm, at most 8 mm') },
  /** Gaps in which a finger may be held. */
  fingerTrap: { from: 7, to: 12, source: recalled('en581-1', 'below 7 mm or above 12 mm') },
  /** Openings closed all round in which a child's head may be held: more than, less than. */
  headTrap: { from: inches(3.5), to: inches(9), source: seen('cpsc', 'B.2.5') },
} as const satisfies Record<string, SizeRange>;

/**
 * How many people a clear seat takes at 18 in each.
 * @example seatsAcross(inches(48)) // 2
 */
export function seatsAcross(clear: Mm): number {
  return Math.floor(clear / SEATING.widthPerPerson.from + 1e-9);
}

/**
 * What a gap may hold, or undefined when neither. Gaps at the very limit count as trapping.
 * @example gapTraps(9) // 'finger'
 */
export function gapTraps(gap: Mm): 'finger' | 'head' | undefined {
  if (gap >= SEATING.fingerTrap.from && gap <= SEATING.fingerTrap.to) return 'finger';
  if (gap >= SEATING.headTrap.from && gap <= SEATING.headTrap.to) return 'head';
  return undefined;
}
