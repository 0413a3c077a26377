import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatLengthExact } from '../measure/format-length.js';
import type { Display } from '../measure/quantities.js';
import { lessThan } from '../measure/tolerance.js';
import { evaluate, explain, type Scope } from '../recipe/evaluate.js';
import type { Formula } from '../recipe/formula.js';
import type { FitRule } from '../recipe/recipe.js';
import type { FitCheck } from './plan.js';
import { fillTemplate } from './step-text.js';

/** Does it suit the place? Each rule of the recipe with its figure, limit and advice. */
export function fitChecks(
  rules: readonly FitRule[],
  scope: Scope,
  display: Display,
): readonly FitCheck[] {
  return rules.filter(rule => applies(rule, scope)).map(rule => fitCheck(rule, scope, display));
}

function applies({ when }: FitRule, scope: Scope): boolean {
  if (!when) return true;
  const held = evaluate(when, scope);
  return held.ok && held.value.kind === 'flag' && held.value.value;
}

function fitCheck(rule: FitRule, scope: Scope, display: Display): FitCheck {
  const value = numberIn(rule.value, scope);
  const least = rule.least ? numberIn(rule.least, scope) : undefined;
  const most = rule.most ? numberIn(rule.most, scope) : undefined;
  const under = least !== undefined && lessThan(value, least);
  const over = most !== undefined && lessThan(most, value);
  const limits = [
    ...(least === undefined ? [] : [`at least ${formatLengthExact(least, display)}`]),
    ...(most === undefined ? [] : [`at most ${formatLengthExact(most, display)}`]),
  ];
  const holds = !under && !over;
  return {
    id: rule.id,
    say: rule.say,
    value: figure(value, 'mm', explain(rule.value, scope, display), COMPUTED),
    limit: limits.join(', '),
    verdict: holds ? 'fits' : rule.must ? 'does not fit' : 'look again',
    advice: holds ? '' : fillTemplate(rule.otherwise, scope, display),
    source: rule.source,
  };
}

function numberIn(formula: Formula, scope: Scope): number {
  const result = evaluate(formula, scope);
  if (!result.ok || result.value.kind !== 'number') {
    throw new Error(`a fit rule that the checks let through has no number: ${formula.text}`);
  }
  return result.value.value;
}
