import { type GlueId, glueOf } from '../materials/glue.js';
import { GLUE_NEED_SOURCE, glueNeed } from '../materials/glue-need.js';
import { glueTimes } from '../materials/glue-times.js';
import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatTemperature } from '../measure/temperature.js';
import type { Model } from '../model/part.js';
import { containerWords } from './container-words.js';
import type { GluePlan } from './plan.js';
import type { Setting } from './setting.js';

/** What stands outdoors and is coated takes this class; common practice. */
export const GLUE: GlueId = 'pva-type-1';
/** Times are planned for a room at 20 °C; the step tells what cold does to them. */
const PLANNED_AT = 20;

/** Glue from the faces that really touch in glued joints. */
export function gluePlan(model: Model, { display, dryness }: Setting): GluePlan {
  const area = model.joints
    .filter(joint => joint.glue)
    .reduce((sum, joint) => sum + joint.gluedArea, 0);
  const glue = glueOf(GLUE);
  const need = glueNeed(area, GLUE);
  const times = glueTimes(GLUE, PLANNED_AT);
  if (times.kind !== 'times') throw new Error('no glue times at room temperature');
  const at = `at ${formatTemperature(PLANNED_AT, display)}`;
  const colder = 'twice as long for each 10 °C (18 °F) colder';
  return {
    kind: glue.name,
    area: figure(area, 'mm2', 'faces that touch in the glued joints', COMPUTED),
    amount: figure(
      need.milliliters,
      'ml',
      'both faces brushed, 15 % for squeeze-out and the brush',
      GLUE_NEED_SOURCE,
    ),
    buy: containerWords(need.bottles[display.system]),
    openTime: figure(
      times.openMinutes,
      'min',
      `${at}, shorter in the heat`,
      glue.openMinutes.source,
    ),
    clampTime: figure(times.clampMinutes, 'min', `${at}, ${colder}`, glue.clampMinutes.source),
    cureTime: figure(
      times.fullCureHours * 60,
      'min',
      `no load on the joint before, ${at}, ${colder}`,
      glue.fullCureHours.source,
    ),
    lowest: figure(
      glue.lowest.value,
      'C',
      'wood, glue and air, until it has set and the night after',
      glue.lowest.source,
    ),
    notes: dryness.forGlue === 'too-wet' ? [WET_WOOD, ...glue.notes] : glue.notes,
  };
}

const WET_WOOD =
  'These boards may be too wet for glue: it sets by giving its water to the wood. Dry them first, or count on the screws alone.';
