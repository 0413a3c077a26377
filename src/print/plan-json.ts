import type { Plan } from '../plan/plan.js';

/** The plan as a file for other programs; its JSON Schema is made from this type. */
export type PlanFile = { readonly format: 1 } & Omit<Plan, 'model'>;

/**
 * The plan as JSON: each figure with its value, unit, `because` and `source`. The boards in space are
 * left to `show model`; nothing else is left out.
 */
export function planJson(plan: Plan): string {
  const { model: _boards, ...rest } = plan;
  const file: PlanFile = { format: 1, ...rest };
  return `${JSON.stringify(file, null, 2)}\n`;
}
