import { formatMinutes } from '../measure/duration.js';
import { evaluate } from '../recipe/evaluate.js';
import type { StepRule, TimerRule } from '../recipe/recipe.js';
import type { StepTimer } from './plan.js';
import type { Worked } from './steps.js';

/** Timers of a step, their length from the rules for glue and sealer. */
export function timersOf(rule: StepRule, worked: Worked): readonly StepTimer[] {
  return rule.timers.map(timer => {
    const { minutes, because } = lengthOf(timer, worked);
    return { id: `${rule.id}/${timer.id}`, name: timer.name, minutes, because, then: timer.then };
  });
}

function lengthOf(
  { lasts }: TimerRule,
  { glue, sealer, scope }: Worked,
): { minutes: number; because: string } {
  if (lasts === 'glue-clamp') return minutesOf(glue.clampTime);
  if (lasts === 'glue-cure') return minutesOf(glue.cureTime);
  if (lasts === 'sealer-dwell') return minutesOf(sealer.dwell);
  if (lasts === 'sealer-dry') return minutesOf(sealer.dry);
  const result = evaluate(lasts, scope);
  if (!result.ok || result.value.kind !== 'number')
    throw new Error(`a timer without a number: ${lasts.text}`);
  return {
    minutes: result.value.value,
    because: `${formatMinutes(result.value.value)}, as the recipe says`,
  };
}

function minutesOf({ value, because }: { readonly value: number; readonly because: string }) {
  return { minutes: value, because };
}
