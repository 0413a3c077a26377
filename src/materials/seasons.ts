import type { Source } from '../measure/figure.js';
import { ANSWERED } from '../measure/figure.js';
import type { Climate } from './climate.js';
import { CLIMATES } from './climates.js';
import { practice } from './sources.js';

/** A moisture percent and when it is reached. */
export type Reading = { readonly percent: number; readonly when: string };

/** How dry and how wet the wood of a place becomes through a year. */
export type Swing = {
  readonly driest: Reading;
  readonly wettest: Reading;
  readonly source: Source;
};

const MONTHS = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
] as const;

/** Points of moisture between the driest and the wettest time where rain and sun reach the boards. */
export const OPEN_POINTS = {
  value: 8,
  source: practice('boards in rain and sun swing 6 to 10 points; 8 is the middle'),
} as const;

/** The place with this name, in any spelling of case, spaces and marks; undefined when there is none. */
export function climateNamed(name: string): Climate | undefined {
  const asked = lettersOf(name);
  return CLIMATES.find(place =>
    [place.name, ...place.alsoCalled].some(known => lettersOf(known) === asked),
  );
}

/** Names that climateNamed takes, for a "did you mean". */
export function climateNames(): readonly string[] {
  return CLIMATES.flatMap(place => [place.name, ...place.alsoCalled]);
}

/**
 * The driest and the wettest month of a place, the first of equals; sheltered wood.
 * @example swingOf(place) // Salt Lake City: 7.1 % in July, 14.9 % in December
 */
export function swingOf({ year, source }: Climate): Swing {
  if (year.kind === 'ends') {
    const at = (percent: number, when: string) => ({ percent, when });
    return {
      driest: at(year.driest, 'the driest month'),
      wettest: at(year.wettest, 'the wettest month'),
      source,
    };
  }
  const readings = year.percents.map((percent, i) => ({ percent, when: MONTHS[i] ?? '' }));
  const [first, ...rest] = readings;
  if (first === undefined) throw new Error('a place without months');
  return {
    driest: rest.reduce((best, it) => (it.percent < best.percent ? it : best), first),
    wettest: rest.reduce((best, it) => (it.percent > best.percent ? it : best), first),
    source,
  };
}

/** The swing between two readings of the user's own meter, in either order. */
export function ownSwing(oneReading: number, otherReading: number): Swing {
  return {
    driest: { percent: Math.min(oneReading, otherReading), when: 'your drier reading' },
    wettest: { percent: Math.max(oneReading, otherReading), when: 'your wetter reading' },
    source: ANSWERED,
  };
}

/**
 * The swing of the same place where rain and sun reach the boards: at least 8 points, as much wider at
 * the dry end as at the wet one. A month's mean air says nothing of a soaked or baked board.
 * @example inTheOpen(swing) // 7.1 to 14.9 % becomes 7.0 to 15.0 %
 */
export function inTheOpen({ driest, wettest, source }: Swing): Swing {
  const short = OPEN_POINTS.value - (wettest.percent - driest.percent);
  if (short <= 0) return { driest, wettest, source };
  return {
    driest: { percent: Math.max(0, driest.percent - short / 2), when: 'dry and sunny weather' },
    wettest: { percent: wettest.percent + short / 2, when: 'long rain' },
    source: OPEN_POINTS.source,
  };
}

function lettersOf(name: string): string {
  return name.toLowerCase().replace(/[^a-z]/g, '');
}
