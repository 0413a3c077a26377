import type { Source } from '../measure/figure.js';
import type { Mm } from '../measure/quantities.js';
import { formFor, type Movement, movementBy, type Piece } from './movement.js';
import type { Swing } from './seasons.js';
import { noBetter } from './weaker-source.js';

/** What a board that is set today does until the wettest and until the driest time of its year. */
export type BoardYear = {
  readonly wet: Movement;
  readonly dry: Movement;
  /** How far it grows from today; negative for a board that is wetter today than it will ever be. */
  readonly swell: Mm;
  /** How far it shrinks from today; negative for a board that is drier today than it will ever be. */
  readonly shrink: Mm;
  /** That of the movement, no better known than the moistures of the year. */
  readonly source: Source;
};

/**
 * The year of a board of today's moisture percent.
 * @example boardYear(cedarFlat, 12, swing) // 5-1/2 in, 9 to 15 %: grows and shrinks 0.97 mm
 */
export function boardYear(piece: Piece, today: number, swing: Swing): BoardYear {
  const { wettest, driest } = swing;
  const form = formFor(piece, today, [wettest.percent, driest.percent]);
  const wet = movementBy(form, piece, { from: today, to: wettest.percent });
  const dry = movementBy(form, piece, { from: today, to: driest.percent });
  return {
    wet,
    dry,
    swell: wet.change,
    shrink: -dry.change,
    source: noBetter(wet.source, swing.source.standing),
  };
}
