import { formatMinutes } from '../measure/duration.js';
import { evaluate } from '../recipe/evaluate.js';
import type { StepRule, TimerRule } from '../recipe/recipe.js';
import type { StepTimer } from './plan.js';
import { selectJoints } from './select.js';
import type { Worked } from './steps.js';
import type { DayWork } from './told-day.js';

/** Timers of a step, their length from the rules for glue and sealer. */
export function timersOf(rule: StepRule, worked: Worked): readonly StepTimer[] {
  return rule.timers.map(timer => {
    const { minutes, because } = lengthOf(timer, worked);
    const { name, lasts, then } = timer;
    const trade = typeof lasts === 'string' ? { lasts } : {};
    return { id: `${rule.id}/${timer.id}`, name, minutes, because, ...trade, then };
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

/** What the day has to suit, by the joints that are glued and the waits that are begun. */
export function dayWorkOf({ joins, timers }: StepRule, { model }: Worked): DayWork | undefined {
  const waits = timers.map(({ lasts }) => (typeof lasts === 'string' ? lasts : ''));
  if (waits.some(lasts => lasts.startsWith('sealer'))) return 'seal';
  const glues = waits.some(lasts => lasts.startsWith('glue'));
  return glues || selectJoints(model, joins).some(({ glue }) => glue) ? 'glue' : undefined;
}
