import { BEAM_SOURCES } from './beams.js';
import * as european from './design-factors-en.js';
import * as american from './design-factors-nds.js';
import { NDS_4A } from './design-values-nds.js';
import { SOUTHERN_PINE } from './design-values-southern-pine.js';
import { GRADE_SOURCES } from './design-values-species.js';
import * as notches from './notch-limits.js';
import { NOTCH_EN_SOURCE, NOTCH_SHEAR_SOURCE } from './notch-shear.js';
import { SAG_LIMITS } from './sag-limits.js';
import { STRENGTH_CLASSES } from './strength-classes.js';

/** Tables about what boards carry, by the heading they have on the sources page. */
export const STRENGTH_TABLES: Readonly<Record<string, unknown>> = {
  'strength of boards': [NDS_4A, SOUTHERN_PINE, STRENGTH_CLASSES, GRADE_SOURCES],
  'strength factors': [{ ...american }, { ...european }],
  beams: [BEAM_SOURCES, SAG_LIMITS],
  notches: [{ ...notches }, NOTCH_SHEAR_SOURCE, NOTCH_EN_SOURCE],
};
