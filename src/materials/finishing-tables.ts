import { CAUTIONS } from './cautions.js';
import { SEALER_CARE, TWO_PERSON_SOURCE } from './cautions-handling.js';
import { GLUES, YOUNG_JOINT } from './glue.js';
import { GLUE_NEED_SOURCE } from './glue-need.js';
import { DECK_DEAD_LOAD, DECK_LIVE_LOAD, FILLS, PERSON, STEP_LOAD } from './loads.js';
import { ABOVE_DEW_POINT, DAMPEST_AIR_PERCENT, SEALERS, WETTEST_TO_SEAL } from './sealer.js';
import { SEALER_NEED_SOURCE } from './sealer-need.js';
import { SEATING } from './seating.js';
import { FIRST_TIME, TASK_TIMES } from './task-times.js';
import { TOOLS } from './tools.js';

/** Tables about glue, finish, use, tools and time, by the heading they have on the sources page. */
export const FINISHING_TABLES: Readonly<Record<string, unknown>> = {
  glue: [GLUES, GLUE_NEED_SOURCE, YOUNG_JOINT],
  sealer: [SEALERS, SEALER_NEED_SOURCE, SEALER_CARE],
  'weather for finishing': [ABOVE_DEW_POINT, DAMPEST_AIR_PERCENT, WETTEST_TO_SEAL],
  seats: SEATING,
  loads: [FILLS, PERSON, DECK_LIVE_LOAD, DECK_DEAD_LOAD, STEP_LOAD],
  cautions: [CAUTIONS, TWO_PERSON_SOURCE],
  tools: TOOLS,
  'working times': [TASK_TIMES, FIRST_TIME],
};
