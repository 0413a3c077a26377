import { feet } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import type { Section } from './section.js';
import { type Sourced, sourced } from './sourced.js';
import { practice } from './sources.js';

const FRAMING = sourced(
  [6, 8, 10, 12, 14, 16, 18, 20].map(feet),
  practice('retail lengths of framing lumber; PS 20 sells whole feet, usually in steps of 2 ft'),
);

const BOARDS = sourced(
  [6, 8, 10, 12, 16].map(feet),
  practice('retail lengths of 1 in boards and small sections'),
);

const DECKING = sourced([8, 10, 12, 16].map(feet), practice('retail lengths of 5/4 decking'));

const METRIC = sourced(
  [1800, 2400, 3000, 3600, 4200, 4800, 5400, 6000],
  practice('retail lengths in the United Kingdom, in steps of 0.3 m'),
);

/**
 * The lengths a yard usually has of this section, shortest first. A builder's own yard may differ:
 * these are offered, not assumed.
 * @example storeLengths(sectionNamed('5/4x6')).value // 8, 10, 12 and 16 ft, in mm
 */
export function storeLengths(section: Section): Sourced<readonly Mm[]> {
  if (section.family === 'metric') return METRIC;
  if (section.name.startsWith('5/4')) return DECKING;
  return section.name.startsWith('1x') || section.name === '2x2' ? BOARDS : FRAMING;
}

/** The values of storeLengths without their source. */
export function usualLengths(section: Section): readonly Mm[] {
  return storeLengths(section).value;
}
