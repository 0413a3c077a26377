import { CANS_RULE } from './cans.js';
import { CLAMPS_RULE } from './clamps.js';
import { GLUE_RULE } from './glue.js';
import { LEGS_RULE } from './legs.js';
import { MISTAKE_RULE } from './mistake.js';
import { POTS_RULE } from './pots.js';
import type { WorkRule } from './rule.js';
import { SEAL_RULE } from './seal.js';
import { SOIL_RULE } from './soil.js';
import { SQUARE_RULE } from './square.js';
import { TAPE_RULE } from './tape.js';

/** Measuring, gluing, sealing, planters and slips, in the order of the work. */
export const SHOP_RULES: readonly WorkRule[] = [
  TAPE_RULE,
  SQUARE_RULE,
  LEGS_RULE,
  CLAMPS_RULE,
  GLUE_RULE,
  SEAL_RULE,
  CANS_RULE,
  SOIL_RULE,
  POTS_RULE,
  MISTAKE_RULE,
];
