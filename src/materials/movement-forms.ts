import type { Source } from '../measure/figure.js';
import { formatNumber } from '../measure/format-number.js';
import type { Mm } from '../measure/quantities.js';
import { recalled, seen } from './sources.js';

/** What a board does when its moisture changes: `factor` is the sum that its size is multiplied by. */
export type Change = { readonly change: Mm; readonly factor: string };

/** Moisture percents before and after, neither above saturation. */
export type FromTo = { readonly from: number; readonly to: number };

export const COEFFICIENT_LIMITS = { least: 6, most: 14 } as const;
export const COEFFICIENT_SOURCE: Source = seen('wood-handbook', 'equation 13-2');
export const TOTAL_SHRINKAGE_SOURCE: Source = recalled('wood-handbook', 'equation 13-3');

/**
 * Coefficient form, Wood Handbook equation 13-2: size x coefficient x points of moisture, from 6 to 14 %.
 * @example byCoefficient(inches(5), 0.00129, { from: 6, to: 9 }) // mesquite: 0.019 in wider
 */
export function byCoefficient(size: Mm, perPoint: number, { from, to }: FromTo): Change {
  return {
    change: size * perPoint * (to - from),
    factor: `${formatNumber(perPoint, 5)} x (${percent(to)} - ${percent(from)})`,
  };
}

/** Shrinkage in percent from `saturation` to oven-dry. */
export type Shrinkage = { readonly percent: number; readonly saturation: number };

/**
 * Total-shrinkage form, Wood Handbook equation 13-3, for moistures outside 6 to 14 %: size x points of
 * moisture / (100 x saturation / shrinkage - saturation + moisture before).
 * @example byTotalShrinkage(100, { percent: 7.5, saturation: 30 }, { from: 30, to: 0 }) // 7.5 mm narrower
 */
export function byTotalShrinkage(size: Mm, shrinkage: Shrinkage, { from, to }: FromTo): Change {
  const { percent: shrinks, saturation } = shrinkage;
  const per = (100 * saturation) / shrinks - saturation + from;
  return {
    change: (size * (to - from)) / per,
    factor: `(${percent(to)} - ${percent(from)}) / (100 x ${percent(saturation)} / ${percent(shrinks)} - ${percent(saturation)} + ${percent(from)})`,
  };
}

/** Sawn framing lumber from wet to between 8 and 19 %, of whatever grain, for most softwoods. */
export const FRAMING = {
  wetFrom: 28,
  least: 8,
  most: 19,
  width: { wet: 6.031, perPoint: 0.215 },
  thickness: { wet: 5.062, perPoint: 0.181 },
  source: seen('fpl-rp-489', 'shrinkage of lumber from 28 % to between 8 and 19 %'),
} as const;

/**
 * Framing form, USDA FPL-RP-489: percent that a wet board loses, 6.031 - 0.215 M of its width or
 * 5.062 - 0.181 M of its thickness, on the way from 28 % or more to M percent.
 * @example byFraming(inches(5.5), 'width', 15) // 0.154 in narrower
 */
export function byFraming(size: Mm, across: 'width' | 'thickness', to: number): Change {
  const { wet, perPoint } = FRAMING[across];
  return {
    change: (-size * (wet - perPoint * to)) / 100,
    factor: `-(${wet} - ${perPoint} x ${percent(to)}) / 100`,
  };
}

function percent(value: number): string {
  return formatNumber(value, 2);
}
