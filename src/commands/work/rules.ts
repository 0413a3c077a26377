import { BOARDS_RULE } from './boards/boards.js';
import { GAP_RULE } from './gap.js';
import { HOLD_RULES } from './hold-rules.js';
import { LAP_RULE } from './lap.js';
import { MOISTURE_RULE } from './moisture.js';
import { MOVEMENT_RULE } from './movement.js';
import type { WorkRule } from './rule.js';
import { SHOP_RULES } from './shop-rules.js';
import { SLOT_RULE } from './slot.js';
import { SPACING_RULE } from './spacing.js';

/** Everything that can be worked out alone, in the order of the work. */
export const WORK_RULES: readonly WorkRule[] = [
  MOISTURE_RULE,
  MOVEMENT_RULE,
  GAP_RULE,
  SLOT_RULE,
  SPACING_RULE,
  BOARDS_RULE,
  LAP_RULE,
  ...SHOP_RULES,
  ...HOLD_RULES,
];
