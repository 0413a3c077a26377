import type { Scope } from '../recipe/evaluate.js';
import type { StackRule } from '../recipe/recipe.js';
import type { Item, Value } from '../recipe/values.js';
import { lengthValue, numberValue, withNames } from './setout-scope.js';
import type { Setting } from './setout-setting.js';

/** One thing of a list answer, and the scope in which a rule that walks the list is worked out for it. */
export type Thing = { readonly number: number; readonly scope: Scope };

/** The things that a stack rule walks, in the order they were answered; none for an empty list. */
export function thingsOf(setting: Setting, rule: StackRule): readonly Thing[] {
  const answer = setting.ground.answers[rule.each];
  if (answer === undefined || answer.kind !== 'items') return [];
  return answer.value.map((item, i) => ({
    number: i + 1,
    scope: withNames(namesOf(item, answer.value.slice(0, i)), setting.scope),
  }));
}

/** `item.height`, `item.number`, and `item.before.height` for all the things before it together. */
function namesOf(item: Item, before: readonly Item[]): ReadonlyMap<string, Value> {
  const names = new Map<string, Value>([['item.number', numberValue(before.length + 1)]]);
  for (const [field, length] of Object.entries(item)) {
    const sum = before.reduce((total, other) => total + (other[field] ?? 0), 0);
    names.set(`item.${field}`, lengthValue(length));
    names.set(`item.before.${field}`, lengthValue(sum));
  }
  return names;
}
