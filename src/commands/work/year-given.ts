import { type BoardYear, boardYear } from '../../materials/board-year.js';
import type { Swing } from '../../materials/seasons.js';
import { type Parsed, parsed } from '../../measure/parsed.js';
import type { Mm } from '../../measure/quantities.js';
import type { Given, WorkOption } from './rule.js';
import { SEASON_OPTIONS, swingGiven } from './season-options.js';
import { GRAIN_OPTION, grainOf, WOOD_OPTION, woodOf } from './wood-options.js';

/** What has to be known of a board and of where it will stand. */
export const YEAR_OPTIONS: readonly WorkOption[] = [WOOD_OPTION, GRAIN_OPTION, ...SEASON_OPTIONS];

export type YearGiven = { readonly year: BoardYear; readonly swing: Swing };

/** The year of so much wood across the grain, from the options above. */
export function yearGiven(given: Given, size: Mm): Parsed<YearGiven> {
  const wood = woodOf(given);
  if (!wood.ok) return wood;
  const swing = swingGiven(given);
  if (!swing.ok) return swing;
  const piece = { size, across: 'width', wood: wood.value, grain: grainOf(given) } as const;
  const year = boardYear(piece, given.number('today'), swing.value);
  return parsed({ year, swing: swing.value });
}

/** Said where boards will only ever swell or only ever shrink from today. */
export function oneWayWords({ swell, shrink }: BoardYear): readonly string[] {
  if (swell < 0) return ['Today it is wetter than it will ever be there: it only shrinks.'];
  return shrink < 0 ? ['Today it is drier than it will ever be there: it only grows.'] : [];
}
