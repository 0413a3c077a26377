import { formatLengthExact } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snapDown } from '../measure/round.js';
import { atMost } from '../measure/tolerance.js';
import { practice, recalled, seen } from './sources.js';

/** Over a support, in the outer thirds of the span, or in its middle third. */
export type NotchPlace = 'end' | 'outer' | 'middle';
/** The edge that people press on, or the one that is stretched. */
export type NotchEdge = 'top' | 'bottom';

export type AskedNotch = {
  /** Actual size of the board in the direction of the load, and across it. */
  readonly memberDepth: Mm;
  readonly memberThickness: Mm;
  readonly place: NotchPlace;
  readonly edge: NotchEdge;
  readonly depth: Mm;
  /** Along the board; left out where only the depth is asked. */
  readonly length?: Mm;
};

export type NotchJudgement = {
  readonly verdict: 'within the rule' | 'over the rule' | 'no notch there';
  /** Deepest and longest that the rule lets pass, not rounded; none in the middle third. */
  readonly deepest: Mm;
  readonly longest: Mm;
  readonly because: string;
};

const AT_END = 1 / 4;
const IN_OUTER_THIRDS = 1 / 6;
const LENGTH_SHARE = 1 / 3;
const THICK_MEMBER = inches(3.5);

export const NOTCH_LIMIT_SOURCE = recalled(
  'nds',
  '4.4.3: a quarter of the depth at a bearing, a sixth in the outer thirds, none in the middle third',
);
export const NOTCH_LENGTH_SOURCE = seen(
  'awc-notches',
  '3.2.3: up to a sixth of the depth and a third of it in length, stiffness hardly changes',
);

/**
 * The usual limits for notches in a board that carries across a span, by its actual depth: a quarter
 * over a support, a sixth in the outer thirds, none in the middle third.
 * @example notchLimits(inches(5.5), 'outer').deepest // 23.28 mm: 0.917 in, mark 7/8 in
 */
export function notchLimits(
  memberDepth: Mm,
  place: NotchPlace,
): { readonly deepest: Mm; readonly longest: Mm } {
  if (place === 'middle') return { deepest: 0, longest: 0 };
  const share = place === 'end' ? AT_END : IN_OUTER_THIRDS;
  const longest = place === 'end' ? Number.POSITIVE_INFINITY : memberDepth * LENGTH_SHARE;
  return { deepest: memberDepth * share, longest };
}

/** A limit as it is marked on the board: on the grid, never rounded up. */
export function markedLimit(limit: Mm, { grid }: Display): Mm {
  return snapDown(limit, grid);
}

/** Whether the rule lets a notch pass, and the sum in words. */
export function judgeNotch(asked: AskedNotch, display: Display): NotchJudgement {
  const { deepest, longest } = notchLimits(asked.memberDepth, asked.place);
  const say = (length: Mm) => formatLengthExact(length, display);
  if (asked.place === 'middle') {
    const because = 'the rule allows no notch at all in the middle third of the span';
    return { verdict: 'no notch there', deepest, longest, because };
  }
  if (isThickAndStretched(asked)) {
    const because = `a board ${say(asked.memberThickness)} thick may not be notched on the stretched edge except over a support`;
    return { verdict: 'no notch there', deepest: 0, longest: 0, because };
  }
  const deepEnough = atMost(asked.depth, deepest);
  const short = asked.length === undefined || atMost(asked.length, longest);
  const share = asked.place === 'end' ? 'a quarter' : 'a sixth';
  const lengthWords =
    asked.place === 'end'
      ? ''
      : `, and a third of it in length, ${say(markedLimit(longest, display))}`;
  return {
    verdict: deepEnough && short ? 'within the rule' : 'over the rule',
    deepest,
    longest,
    because: `${share} of ${say(asked.memberDepth)} is ${say(markedLimit(deepest, display))}, rounded down${lengthWords}`,
  };
}

/** NDS 4.4.3: members 3-1/2 in or thicker take no notch on the stretched edge, ends excepted. */
function isThickAndStretched({ memberThickness, edge, place }: AskedNotch): boolean {
  return edge === 'bottom' && place !== 'end' && atMost(THICK_MEMBER, memberThickness);
}

/**
 * What a notch leaves where it is, as shares of the whole board: bending goes with the square of the
 * depth, stiffness with its cube.
 * @example remainingShare(inches(3.5), inches(1.5)) // bending 0.327, stiffness 0.187
 */
export function remainingShare(
  memberDepth: Mm,
  notchDepth: Mm,
): { readonly bending: number; readonly stiffness: number } {
  const left = Math.max(0, memberDepth - notchDepth) / memberDepth;
  return { bending: left ** 2, stiffness: left ** 3 };
}

export const REMAINING_SOURCE = practice(
  'bending with the square, stiffness with the cube of depth',
);
