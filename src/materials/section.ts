import type { Source } from '../measure/figure.js';
import type { Mm } from '../measure/quantities.js';
import { METRIC_SECTIONS } from './metric-sections.js';
import { US_SECTIONS } from './us-sections.js';

/** What a trade name such as 2x4 really measures. */
export type Section = {
  /** Trade name, "2x4" or "45x95". A dry and a green section share one name. */
  readonly name: string;
  readonly thickness: Mm;
  readonly width: Mm;
  readonly family: 'us-dry' | 'us-green' | 'metric';
  /** How it is sold, for example "dressed, dry, 19 % moisture or less". */
  readonly sold: string;
  readonly source: Source;
};

export const SECTIONS: readonly Section[] = [...US_SECTIONS, ...METRIC_SECTIONS];

/**
 * The section with this trade name, or undefined when no yard sells it under that name.
 * Wet American lumber is dressed larger than dry; a metric name is the same either way.
 * @example sectionNamed('2 x 4')?.thickness // 38.1 mm: 1-1/2 in
 * @example sectionNamed('2x4', true)?.thickness // 39.6875 mm: 1-9/16 in
 */
export function sectionNamed(name: string, wet = false): Section | undefined {
  const other = wet ? 'us-dry' : 'us-green';
  const asked = plainName(name);
  const turned = asked.split('x').reverse().join('x');
  const sold = SECTIONS.filter(section => section.family !== other);
  return (
    sold.find(section => section.name === asked) ?? sold.find(section => section.name === turned)
  );
}

/** Every trade name once, in the order of the tables. */
export function sectionNames(): readonly string[] {
  return [...new Set(SECTIONS.map(section => section.name))];
}

/** "2 × 4", "2X4" and "45 x 95 mm" written the way the tables write them. */
function plainName(name: string): string {
  return name
    .toLowerCase()
    .replace(/[×✕*]/g, 'x')
    .replace(/\s+/g, '')
    .replace(/mm$/, '')
    .replace(/mmx/, 'x')
    .replace(/^1-?1\/4x/, '5/4x');
}
