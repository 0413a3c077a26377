import { evaluate, type Scope } from '../recipe/evaluate.js';
import type { Formula } from '../recipe/formula.js';

/** Whether a step of a recipe belongs to this build: its condition holds, or it has none. */
export function applies(when: Formula | undefined, scope: Scope): boolean {
  if (!when) return true;
  const held = evaluate(when, scope);
  return held.ok && held.value.kind === 'flag' && held.value.value;
}

/** The number that a formula of a step comes to; undefined where it comes to none. */
export function numberOf(formula: Formula | undefined, scope: Scope): number | undefined {
  if (!formula) return undefined;
  const result = evaluate(formula, scope);
  return result.ok && result.value.kind === 'number' ? result.value.value : undefined;
}
