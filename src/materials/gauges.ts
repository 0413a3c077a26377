import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { type Sourced, sourced } from './sourced.js';
import { recalled, seen, workedOut } from './sources.js';

/** An inch wood screw by gauge number. A field is undefined where no publication at hand prints it. */
export type Gauge = {
  readonly gauge: number;
  readonly shank: Sourced<Mm>;
  /** Root of the thread as strength tables count it. Never used for choosing a drill. */
  readonly rootForStrength: Sourced<Mm> | undefined;
  /** Average root over the thread as boring charts count it. Never used for strength. */
  readonly rootForBoring: Sourced<Mm> | undefined;
  readonly threadsPerInch: Sourced<number>;
  /** Largest flat head. */
  readonly head: Sourced<Mm>;
  /** Shortest and longest length sold. */
  readonly sold: Sourced<{ readonly shortest: Mm; readonly longest: Mm }> | undefined;
};

/**
 * Shank diameter of a gauge: 0.060 in plus 0.013 in for each number.
 * @example shank(10) // 4.826 mm: 0.190 in
 */
export function shank(gauge: number): Mm {
  return inches(0.06 + 0.013 * gauge);
}

type Row = {
  readonly gauge: number;
  readonly strength?: number;
  readonly boring?: number;
  readonly threads: number;
  readonly head: number;
  readonly sold?: readonly [number, number];
};

/** Inches. Threads and heads are printed in the pages at hand for Nos. 4 to 8 and 4 to 7 only. */
const ROWS: readonly Row[] = [
  { gauge: 4, boring: 0.075, threads: 22, head: 0.225, sold: [1 / 4, 1.5] },
  { gauge: 5, threads: 20, head: 0.252, sold: [3 / 8, 2] },
  { gauge: 6, strength: 0.113, boring: 0.094, threads: 18, head: 0.279, sold: [3 / 8, 3] },
  { gauge: 7, strength: 0.122, threads: 16, head: 0.305, sold: [1 / 2, 3] },
  { gauge: 8, strength: 0.131, boring: 0.112, threads: 15, head: 0.332, sold: [1 / 2, 3.5] },
  { gauge: 9, strength: 0.142, threads: 14, head: 0.358, sold: [5 / 8, 4] },
  { gauge: 10, strength: 0.152, boring: 0.13, threads: 13, head: 0.385, sold: [5 / 8, 5] },
  { gauge: 12, strength: 0.171, boring: 0.148, threads: 11, head: 0.438, sold: [3 / 4, 5] },
  { gauge: 14, strength: 0.196, boring: 0.165, threads: 10, head: 0.507, sold: [3 / 4, 6] },
  { gauge: 16, strength: 0.209, boring: 0.184, threads: 9, head: 0.544 },
];

const LAST_SEEN_THREADS = 8;
const LAST_SEEN_HEAD = 7;

function gaugeOf(row: Row): Gauge {
  const { gauge, strength, boring, sold } = row;
  const threadsSeen = gauge <= LAST_SEEN_THREADS;
  return {
    gauge,
    shank: sourced(shank(gauge), workedOut('gauge-formula', '0.060 + 0.013 x gauge, in')),
    rootForStrength:
      strength === undefined
        ? undefined
        : sourced(inches(strength), recalled('nds', 'Appendix L, Table L3, root diameter')),
    rootForBoring:
      boring === undefined
        ? undefined
        : sourced(inches(boring), seen('boring-chart', 'average root diameter')),
    threadsPerInch: sourced(
      row.threads,
      threadsSeen
        ? seen('thread-limits', 'threads per inch')
        : recalled('asme-b18-6-1', 'threads per inch'),
    ),
    head: sourced(
      inches(row.head),
      gauge <= LAST_SEEN_HEAD
        ? seen('head-sizes', 'maximum flat head')
        : recalled('asme-b18-6-1', 'maximum flat head'),
    ),
    sold:
      sold === undefined
        ? undefined
        : sourced(
            { shortest: inches(sold[0]), longest: inches(sold[1]) },
            seen('screw-sizes', 'lengths by gauge'),
          ),
  };
}

export const GAUGES: readonly Gauge[] = ROWS.map(gaugeOf);

/** The row of this gauge number, or undefined when the table has none. */
export function gaugeNumbered(gauge: number): Gauge | undefined {
  return GAUGES.find(row => row.gauge === gauge);
}
