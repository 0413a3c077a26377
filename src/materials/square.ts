import { feet, inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { sourced } from './sourced.js';
import { practice, seen } from './sources.js';

/** A frame as measured: two sides that meet, and both diagonals. */
export type MeasuredFrame = {
  readonly length: Mm;
  readonly width: Mm;
  readonly one: Mm;
  readonly other: Mm;
};

/** How far the diagonals may differ: furniture to 4 ft, to 8 ft; beyond that by the length. */
export const DIAGONALS_MAY_DIFFER = {
  toFourFeet: sourced<Mm>(inches(1 / 16), practice('frames to 48 in: within 1/16 in')),
  toEightFeet: sourced<Mm>(inches(1 / 8), practice('frames to 96 in: within 1/8 in')),
  longer: sourced<number>(
    inches(1 / 4) / feet(10),
    seen('framing-benchmark', 'rough framing, 1/4 in in 10 ft'),
  ),
} as const;

/** The diagonal of a true rectangle: 48 x 18 in has 51.264 in. */
export function diagonalOf(length: Mm, width: Mm): Mm {
  return Math.hypot(length, width);
}

export type OutOfSquare = {
  /** Longer diagonal less the shorter. */
  readonly difference: Mm;
  /** How far one long side has to be pushed along itself, past the other, to be square. */
  readonly push: Mm;
  /** What the corner has too much or too little. */
  readonly degrees: number;
  /** What both diagonals measure when it is square. */
  readonly aim: Mm;
};

/**
 * What unequal diagonals mean when opposite sides are equal: d1² - d2² = 4ab sin s.
 * @example a 48 x 18 in frame, diagonals 1/8 in apart // push 0.067 in, 0.21 degrees
 */
export function outOfSquare({ length, width, one, other }: MeasuredFrame): OutOfSquare {
  const squares = Math.abs(one ** 2 - other ** 2);
  const push = squares / (4 * length);
  const sine = Math.min(1, squares / (4 * length * width));
  return {
    difference: Math.abs(one - other),
    push,
    degrees: (Math.asin(sine) * 180) / Math.PI,
    aim: Math.sqrt((one ** 2 + other ** 2) / 2),
  };
}

/**
 * The difference of diagonals that a frame has when one long side stands this far past the other.
 * @example differenceFor(inches(1 / 32), inches(48), inches(18)) // 0.0585 in
 */
export function differenceFor(push: Mm, length: Mm, width: Mm): Mm {
  const tall = Math.sqrt(Math.max(0, width ** 2 - push ** 2));
  return Math.hypot(length + push, tall) - Math.hypot(length - push, tall);
}

/** How far the diagonals may differ on a frame whose longer side is this. */
export function diagonalTolerance(longerSide: Mm): Mm {
  const { toFourFeet, toEightFeet, longer } = DIAGONALS_MAY_DIFFER;
  if (atMost(longerSide, feet(4))) return toFourFeet.value;
  if (atMost(longerSide, feet(8))) return toEightFeet.value;
  return longerSide * longer.value;
}

/**
 * How far both sides and both diagonals can be from belonging to one parallelogram, as a length on the
 * diagonal. Far from zero, opposite sides are not equal or something was measured wrong.
 */
export function doesNotClose({ length, width, one, other }: MeasuredFrame): Mm {
  return Math.abs(Math.sqrt((one ** 2 + other ** 2) / 2) - diagonalOf(length, width));
}

export type FourSides = {
  readonly front: Mm;
  readonly back: Mm;
  readonly left: Mm;
  readonly right: Mm;
  readonly one: Mm;
  readonly other: Mm;
};

export type SquareFault = 'front and back differ' | 'left and right differ' | 'diagonals differ';

/**
 * What keeps four boards from being a rectangle, each within `tolerance`. Equal diagonals alone prove
 * nothing: a frame that narrows evenly to one side has them too.
 */
export function squareFaults(sides: FourSides, tolerance: Mm): readonly SquareFault[] {
  const { front, back, left, right, one, other } = sides;
  const apart = (a: Mm, b: Mm) => !atMost(Math.abs(a - b), tolerance);
  const faults: SquareFault[] = [];
  if (apart(front, back)) faults.push('front and back differ');
  if (apart(left, right)) faults.push('left and right differ');
  if (apart(one, other)) faults.push('diagonals differ');
  return faults;
}
