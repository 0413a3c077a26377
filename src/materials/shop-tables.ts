import { HOLE_DIAMETER, HOLE_PITCH, LEAST_HOLES, OPEN_SHARE } from './drainage.js';
import { MISTAKES } from './mistakes.js';
import { AIR_ROUND_POT, POTS } from './pots.js';
import { NURSERY_CLASSES } from './pots-nursery.js';
import { SETTLING, SOIL_BAGS } from './soil.js';
import { DIAGONALS_MAY_DIFFER } from './square.js';
import { EU_TAPE, HB44_TAPE, HOOK_MAY_DIFFER } from './tape.js';

/** Tables about pots, squareness, tapes and slips, by their heading on the sources page. */
export const SHOP_TABLES: Readonly<Record<string, unknown>> = {
  pots: [POTS, NURSERY_CLASSES, AIR_ROUND_POT],
  'soil and drainage': [SETTLING, SOIL_BAGS, HOLE_PITCH, HOLE_DIAMETER, OPEN_SHARE, LEAST_HOLES],
  squareness: DIAGONALS_MAY_DIFFER,
  tapes: [HB44_TAPE, EU_TAPE, HOOK_MAY_DIFFER],
  'mistakes and what to do': MISTAKES,
};
