import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { gaugeNumbered } from './gauges.js';
import { practice } from './sources.js';

/** Steps are by 1/8 in to 1 in, by 1/4 in to 3 in, by 1/2 in to 5 in; then 6 in. */
const STEPS_IN_INCHES: readonly number[] = [
  ...[2, 3, 4, 5, 6, 7, 8].map(eighths => eighths / 8),
  ...[5, 6, 7, 8, 9, 10, 11, 12].map(quarters => quarters / 4),
  ...[7, 8, 9, 10].map(halves => halves / 2),
  6,
];

export const LENGTH_STEPS_SOURCE = practice(
  'wood screw lengths: steps of 1/8 in to 1 in, 1/4 in to 3 in, 1/2 in to 5 in',
);

/**
 * Lengths in which a gauge is sold, shortest first; none for a gauge that the chart leaves out.
 * @example stockLengths(8).at(-1) // 88.9 mm: No. 8 ends at 3-1/2 in
 */
export function stockLengths(gauge: number): readonly Mm[] {
  const sold = gaugeNumbered(gauge)?.sold;
  if (sold === undefined) return [];
  const { shortest, longest } = sold.value;
  return STEPS_IN_INCHES.map(inches).filter(
    length => atMost(shortest, length) && atMost(length, longest),
  );
}
