import type { WorkRule } from './rule.js';

/** Everything that can be worked out alone, in the order of the work. */
export const WORK_RULES: readonly WorkRule[] = [];
