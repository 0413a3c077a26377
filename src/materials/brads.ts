import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { LEAST_COVER } from './screw-bite.js';
import { sourced } from './sourced.js';
import { practice, seen } from './sources.js';

/** 18 gauge brads. */
export const BRAD_DIAMETER = sourced(inches(0.048), seen('nail-gauges', '18 gauge'));

export const BRAD_LENGTHS = sourced(
  [5 / 8, 3 / 4, 1, 1.25, 1.5, 1.75, 2].map(inches),
  seen('nail-gauges', '18 gauge, 5/8 to 2 in; the steps between are common stock'),
);

const TIMES_THICKNESS = 2.5;
/** Less than this and a brad works loose before the glue has set. Common practice. */
const LEAST_BITE = inches(3 / 8);

export type BradChoice = {
  readonly kind: 'brad';
  readonly length: Mm;
  readonly bite: Mm;
  readonly because: string;
};

export type NoBrad = { readonly kind: 'no-brad'; readonly because: string };

export const BRAD_SOURCE = seen(
  'screw-length-magazine',
  'a fastener is 2.5 times as long as the piece it holds is thick',
);

/** Brads only keep a piece in place while the glue cures or until the screws are in. */
export const BRADS_HOLD = practice('brads locate, they do not carry');

/**
 * The 18 gauge brad for a piece on another: nearest to 2.5 times the piece, at least 3/8 in into the
 * second and 1/8 in short of its far face.
 * @example bradFor(inches(0.75), inches(1.5)) // 1-3/4 in: 1 in of bite
 */
export function bradFor(through: Mm, into: Mm): BradChoice | NoBrad {
  const aim = through * TIMES_THICKNESS;
  const longest = through + into - LEAST_COVER;
  const length = BRAD_LENGTHS.value
    .filter(brad => atMost(through + LEAST_BITE, brad) && atMost(brad, longest))
    .sort((a, b) => Math.abs(a - aim) - Math.abs(b - aim) || a - b)[0];
  if (length === undefined) {
    return {
      kind: 'no-brad',
      because:
        'no 18 gauge brad of 5/8 to 2 in reaches 3/8 in into the second piece and stays inside it: clamp it, or use screws',
    };
  }
  return {
    kind: 'brad',
    length,
    bite: length - through,
    because: 'nearest to 2.5 times the piece it holds, still inside the second piece',
  };
}
