import type { Source } from '../measure/figure.js';
import { EUROPEAN_SOFTWOODS } from './european-softwoods.js';
import { HARDWOODS } from './hardwoods.js';
import { SOFTWOODS } from './softwoods.js';
import type { Sourced } from './sourced.js';
import type { Density } from './wood-density.js';

export type Species = {
  readonly id: string;
  readonly name: string;
  readonly alsoCalled: readonly string[];
  readonly kind: 'softwood' | 'hardwood';
  /** Specific gravity on oven-dry mass, the one that screw and nail rules are written for. */
  readonly gravity: Sourced<number>;
  /** At 12 % moisture. */
  readonly density12: Sourced<Density>;
  /** Percent, green to oven-dry, along the growth rings. */
  readonly shrinkTangential: Sourced<number>;
  /** Percent, green to oven-dry, across the growth rings. */
  readonly shrinkRadial: Sourced<number>;
  /** Fraction of the size per 1 % of moisture: a flat-sawn board's width. */
  readonly changeTangential: Sourced<number>;
  /** Fraction of the size per 1 % of moisture: a quarter-sawn board's width. */
  readonly changeRadial: Sourced<number>;
  /** How the heartwood lasts outdoors. Sapwood of every species rots soon. */
  readonly durability: Sourced<string>;
  /** How readily iron and water stain it blue-black. */
  readonly tannin: 'high' | 'some' | 'none';
  readonly tanninSource: Source;
  /** What is known of its dust. Every wood dust is kept out of the lungs. */
  readonly dust: Sourced<string>;
  /** Pressure treated as usually sold. */
  readonly treated: boolean;
};

export const SPECIES: readonly Species[] = [...SOFTWOODS, ...EUROPEAN_SOFTWOODS, ...HARDWOODS];

/**
 * The species with this id, name or other usual name, in any spelling of case, spaces and hyphens;
 * undefined when there is none.
 * @example speciesNamed('Western Red Cedar')?.id // 'western-redcedar'
 */
export function speciesNamed(idOrName: string): Species | undefined {
  const asked = lettersOf(idOrName);
  return SPECIES.find(species =>
    [species.id, species.name, ...species.alsoCalled].some(name => lettersOf(name) === asked),
  );
}

/** Ids and names that speciesNamed takes, for a "did you mean". */
export function speciesNames(): readonly string[] {
  return SPECIES.flatMap(species => [species.id, species.name, ...species.alsoCalled]);
}

function lettersOf(name: string): string {
  return name.toLowerCase().replace(/[^a-z]/g, '');
}
