import { type Sourced, sourced } from './sourced.js';
import { practice, recalled, seen } from './sources.js';

/** How the boards are on the day they are cut. */
export type Dryness = {
  readonly id: 'kiln-dried' | 'air-dried' | 'surfaced-dry' | 'green' | 'wet-treated';
  readonly name: string;
  readonly moisturePercent: Sourced<number>;
  /** True when the green column of PS 20 is nearer to what the boards measure. */
  readonly wetSections: boolean;
  /** A water-based glue sets by losing water into the wood. */
  readonly forGlue: 'ready' | 'meter-first' | 'too-wet';
};

const SATURATED = sourced(
  30,
  recalled('wood-handbook', 'chapter 4, fiber saturation: a wetter board is no bigger'),
);

/** Driest first. The moisture is what to plan with until somebody puts a meter on a board. */
export const DRYNESS: readonly Dryness[] = [
  {
    id: 'kiln-dried',
    name: 'kiln-dried',
    moisturePercent: sourced(
      12,
      practice('kiln-dried stock kept under cover; a KD15 stamp allows up to 15 %'),
    ),
    wetSections: false,
    forGlue: 'ready',
  },
  {
    id: 'air-dried',
    name: 'air-dried outdoors under cover',
    moisturePercent: sourced(15, practice('12 % to 20 % by climate and season')),
    wetSections: false,
    forGlue: 'ready',
  },
  {
    id: 'surfaced-dry',
    name: 'surfaced dry (S-DRY stamp)',
    moisturePercent: sourced(19, seen('ps20', 'dry means 19 % or less: the wettest it may be')),
    wetSections: false,
    forGlue: 'meter-first',
  },
  {
    id: 'green',
    name: 'green (S-GRN stamp)',
    moisturePercent: SATURATED,
    wetSections: true,
    forGlue: 'too-wet',
  },
  {
    id: 'wet-treated',
    name: 'pressure treated, still wet',
    moisturePercent: SATURATED,
    wetSections: true,
    forGlue: 'too-wet',
  },
];

/** The row with this id, or undefined. */
export function drynessNamed(id: string): Dryness | undefined {
  return DRYNESS.find(dryness => dryness.id === id);
}
