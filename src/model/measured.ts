import type { Section } from '../materials/section.js';
import { MEASURED } from '../measure/figure.js';
import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';

/**
 * What the tape showed at the bench, by name: `2x4.width` and `2x4.thickness` for the boards of a section,
 * `seat` for a size or a length answer of the whole piece, `end_panel.opening_height` for a size of a use. Each
 * takes the place of what the recipe, the answers or the yard say.
 */
export type Measured = ReadonlyMap<string, Mm>;

export const NOTHING_MEASURED: Measured = new Map();

/**
 * What was measured is a fact, so boards that come too close by it are told and not refused, up to this:
 * farther off, something else was measured. A judgment of ours.
 */
export const TOLD_NOT_REFUSED: Mm = inches(1 / 2);

/** The section with its measured sides in place of the sold ones. */
export function measuredSection(section: Section, measured: Measured): Section {
  const width = measured.get(`${section.name}.width`);
  const thickness = measured.get(`${section.name}.thickness`);
  if (width === undefined && thickness === undefined) return section;
  return {
    ...section,
    width: width ?? section.width,
    thickness: thickness ?? section.thickness,
    source: MEASURED,
  };
}

/** What was measured in one use, by the names inside it: `opening_height` of `end_panel.`. */
export function measuredWithin(measured: Measured, path: string): Measured {
  if (path === '' || measured.size === 0) return measured;
  const own = [...measured].filter(([name]) => name.startsWith(path));
  return new Map(own.map(([name, value]) => [name.slice(path.length), value]));
}

/** Sizes of the whole and of the boards: everything is set out by them. */
export function measuredOfWhole(measured: Measured, uses: readonly string[]): Measured {
  return new Map([...measured].filter(([name]) => !isInside(name, uses)));
}

function isInside(name: string, uses: readonly string[]): boolean {
  return uses.some(use => name.startsWith(`${use}.`));
}
