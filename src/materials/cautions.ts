import type { Source } from '../measure/figure.js';
import { CUTTING_CAUTIONS } from './cautions-cutting.js';
import { GLUE_CARE, HANDLING_CAUTIONS } from './cautions-handling.js';
import { PLACE_CAUTIONS } from './cautions-place.js';
import type { GlueId } from './glue.js';
import type { Species } from './species.js';

/** A usual caution. It never replaces the tool's manual, the label or the local code. */
export type Caution = {
  readonly title: string;
  /** Short lines to read out before the work starts. */
  readonly lines: readonly string[];
  readonly source: Source;
};

export const CAUTIONS = { ...CUTTING_CAUTIONS, ...HANDLING_CAUTIONS, ...PLACE_CAUTIONS };

export type CautionId = keyof typeof CAUTIONS;

/** True for a word that names a caution, such as one written in a recipe. */
export function isCautionId(word: string): word is CautionId {
  return Object.hasOwn(CAUTIONS, word);
}

/** What is known of the dust of one wood, with the general care for dust after it. */
export function dustCaution(species: Species): Caution {
  return {
    title: `${species.name} dust`,
    lines: [species.dust.value, ...CAUTIONS.dust.lines],
    source: species.dust.source,
  };
}

/** What the glue in hand asks for, and no other, before what holds for all. */
export function glueCaution(glue: GlueId): Caution {
  const { title, lines, source } = CAUTIONS.glue;
  return { title, lines: [GLUE_CARE[glue], ...lines], source };
}
