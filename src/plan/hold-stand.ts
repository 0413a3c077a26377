import { footLoads } from '../materials/floor-check.js';
import { PERSON, STEP_LOAD } from '../materials/loads.js';
import { COMPUTED } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import { formatWeight } from '../measure/weight.js';
import type { Model } from '../model/part.js';
import type { HoldInputs, HoldRow, StandRole } from './hold-row.js';
import { type Told, tipRows } from './hold-tip.js';
import { type Standing, standingOf } from './hold-weights.js';

/** What stands on feet of its own: does it tip when people sit on its edge, and what does a foot press with? */
export function standRows(model: Model, role: StandRole, inputs: HoldInputs): readonly HoldRow[] {
  const standing = standingOf(model, role, inputs);
  if (standing === undefined) return [];
  return [...tipRows(model, standing, { role, inputs }), footRow(standing, { role, inputs })];
}

/** What one foot presses with, level and rocking on two, against what a stair tread has to carry. */
function footRow(standing: Standing, { role, inputs }: Told): HoldRow {
  const { display, floor } = inputs;
  const total = standing.wood + standing.load;
  const { level, rocking } = footLoads(total, standing.feet.length);
  const over = floor.kind === 'raised' && level > STEP_LOAD.value;
  const rocks = floor.kind === 'raised' && rocking / standing.units > STEP_LOAD.value;
  return {
    id: `${role.id}/feet`,
    say: `${role.say}: weight on one foot`,
    sum: `${formatWeight(total, display)} with ${standing.words} on ${standing.feet.length} feet is ${formatWeight(level, display)} a foot; where it rocks on two, ${formatWeight(rocking / standing.units, display)}`,
    value: figure(level, 'kg', 'all feet touching', COMPUTED),
    limit:
      floor.kind === 'raised'
        ? `${formatWeight(STEP_LOAD.value, display)}, what a stair tread has to carry on 4 sq in`
        : 'on the ground: firm enough not to sink',
    verdict: over || rocks ? 'look again' : 'holds by this sum',
    better:
      over || rocks
        ? 'Level it so that all feet touch, and set the feet over joists or on planks across several of them; never on a roof skin without its maker saying so.'
        : '',
    source: `${sourceText(STEP_LOAD.source)}; ${sourceText(PERSON.source)}`,
  };
}
