import { glueOf } from '../materials/glue.js';
import { formatMinutes } from '../measure/duration.js';
import type { Display } from '../measure/quantities.js';
import { formatTemperature } from '../measure/temperature.js';
import type { Scope } from '../recipe/evaluate.js';
import type { Value } from '../recipe/values.js';
import { GLUE } from './glue-plan.js';
import type { FastenerRow, GluePlan, SealerPlan } from './plan.js';

/** Names that step texts may use beside those of the recipe: `screw.corner`, `glue.open` … */
export function planScope(
  scope: Scope,
  fasteners: readonly FastenerRow[],
  wet: { readonly glue: GluePlan; readonly sealer: SealerPlan },
  display: Display,
): Scope {
  const names = new Map<string, Value>();
  const say = (name: string, text: string) => names.set(name, { kind: 'text', value: text });
  for (const row of fasteners) {
    say(`${row.kind}.${row.id}`, row.what);
    say(`drills.${row.id}`, row.drills);
  }
  say('glue.kind', wet.glue.kind);
  say('glue.open', formatMinutes(wet.glue.openTime.value));
  say('glue.clamp', formatMinutes(wet.glue.clampTime.value));
  say('glue.cure', formatMinutes(wet.glue.cureTime.value));
  say('glue.lowest', formatTemperature(wet.glue.lowest.value, display));
  say('glue.wettest', `${glueOf(GLUE).wettestWoodPercent.value}%`);
  say('sealer.kind', wet.sealer.kind);
  say('sealer.dwell', formatMinutes(wet.sealer.dwell.value));
  return { find: name => names.get(name) ?? scope.find(name) };
}

/** The words that planScope adds, so that the checks of a recipe know them too. */
export const PLAN_WORDS = [
  'glue.kind',
  'glue.open',
  'glue.clamp',
  'glue.cure',
  'glue.lowest',
  'glue.wettest',
  'sealer.kind',
  'sealer.dwell',
] as const;
