import type { Plan } from '../plan/plan.js';

/**
 * The plan as JSON: each figure with its value, unit, `because` and `source`. The boards in space are
 * left to `show model`; nothing else is left out.
 */
export function planJson(plan: Plan): string {
  const { model: _boards, ...rest } = plan;
  return `${JSON.stringify({ format: 1, ...rest }, null, 2)}\n`;
}
