import { BEAM_RULE } from './beam.js';
import { LOAD_RULE } from './load.js';
import { NOTCH_RULE } from './notch.js';
import type { WorkRule } from './rule.js';
import { SCREW_RULE } from './screw.js';

/** Will it hold: screws, boards between supports, notches, weight on a deck. */
export const HOLD_RULES: readonly WorkRule[] = [SCREW_RULE, BEAM_RULE, NOTCH_RULE, LOAD_RULE];
