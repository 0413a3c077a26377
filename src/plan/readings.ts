import type { Display, Mm } from '../measure/quantities.js';
import { snap } from '../measure/round.js';
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

/** The grid on which such a value is written: half a mark where it was averaged. */
export function finer(display: Display): Display {
  return { ...display, grid: display.grid / 2 };
}
