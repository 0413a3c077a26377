import { sourced } from '../materials/sourced.js';
import { practice } from '../materials/sources.js';
import { formatLength } from '../measure/format-length.js';
import { inches } from '../measure/inch.js';
import type { Display, Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { finer } from './readings.js';

/** How far the first piece at a stop may be off before the stop is moved. */
export const FIRST_MAY_BE_OFF = sourced<Mm>(
  inches(1 / 32),
  practice('pieces at one stop within 1/32 in'),
);

export type FirstPiece = { readonly is: 'right' | 'short' | 'long'; readonly by: Mm };

/** The first piece at a stop against what it should be. */
export function firstPiece(planned: Mm, measured: Mm): FirstPiece {
  const by = Math.abs(measured - planned);
  if (atMost(by, FIRST_MAY_BE_OFF.value)) return { is: 'right', by };
  return { is: measured < planned ? 'short' : 'long', by };
}

/** What to do at the saw about it. */
export function stopWords(
  { is, by }: FirstPiece,
  planned: Mm,
  display: Display,
): readonly string[] {
  const off = formatLength(by, finer(display));
  const wanted = formatLength(planned, display);
  if (is === 'right')
    return [
      `It is within ${formatLength(FIRST_MAY_BE_OFF.value, finer(display))} of ${wanted}: cut all at this stop.`,
    ];
  if (is === 'long')
    return [
      `Move the stop ${off} toward the blade and clamp it again.`,
      'Cut this piece again at the new stop: nothing is lost.',
      `Measure it once more and enter it. Only then the others at ${wanted}.`,
    ];
  return [
    `Move the stop ${off} away from the blade and clamp it again.`,
    `Cut one, measure it, enter it. Only then the others at ${wanted}.`,
  ];
}
