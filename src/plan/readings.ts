import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { snap } from '../measure/round.js';
import { lessThan } from '../measure/tolerance.js';
import type { MeasureRow } from './measures.js';

/** Several readings of one length: the one that counts, and how far they are apart. */
export type Readings = { readonly value: Mm; readonly spread: Mm };

/**
 * What readings come to. The average of boards is kept to half a mark of the tape: over thirteen slats the
 * other half would add up. Three readings of 3-3/8, 3-7/16 and 3-3/8 in average 3-13/32 in.
 */
export function readingsOf(
  readings: readonly Mm[],
  { take, kind }: Pick<MeasureRow, 'take' | 'kind'>,
  { grid }: Display,
): Readings {
  const least = Math.min(...readings);
  const most = Math.max(...readings);
  const average = readings.reduce((sum, it) => sum + it, 0) / readings.length;
  const value = { average: snap(average, kind === 'board' ? grid / 2 : grid), least, most }[take];
  return { value, spread: most - least };
}

/** Readings further apart than this are boards to be sorted, or a piece out of true; common practice. */
export const MAY_BE_APART: Mm = inches(1 / 16);

/**
 * One distance that is read at two places and differs by more: what stands there is not parallel, and a length
 * between the two would be wrong at both. Boards of a section are each as wide as they are, and of frames
 * the tightest counts. 47-13/16 in front and 48-1/8 in at the back are 5/16 in apart.
 */
export function isOutOfTrue(
  { spread }: Readings,
  { take, kind }: Pick<MeasureRow, 'take' | 'kind'>,
): boolean {
  return kind === 'size' && take === 'average' && lessThan(MAY_BE_APART, spread);
}

/** The grid on which such a value is written: half a mark where it was averaged. */
export function finer(display: Display): Display {
  return { ...display, grid: display.grid / 2 };
}
