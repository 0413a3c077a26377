import { verdictOf } from '../materials/beam-check.js';
import { footLoads } from '../materials/floor-check.js';
import { PERSON, STEP_LOAD } from '../materials/loads.js';
import { STEADY_SHARE, STEADY_SOURCE, TIPPING_SOURCE, tipping } from '../materials/tipping.js';
import { COMPUTED } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import { formatLength } from '../measure/format-length.js';
import type { Kilograms, Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { formatWeight } from '../measure/weight.js';
import { bounds, center, volume } from '../model/box.js';
import type { Axis, Box, Model, Part } from '../model/part.js';
import { partWeight } from '../model/weight.js';
import type { HoldInputs, HoldRow, StandRole } from './hold-row.js';
import { partsAt } from './hold-spans.js';
import { type Standing, standingOf } from './hold-weights.js';

/** What stands on feet of its own: does it tip when people sit on its edge, and what does a foot press with? */
export function standRows(model: Model, role: StandRole, inputs: HoldInputs): readonly HoldRow[] {
  const standing = standingOf(model, role, inputs);
  if (standing === undefined) return [];
  return [...tipRows(model, standing, { role, inputs }), footRow(standing, { role, inputs })];
}

type Told = { readonly role: StandRole; readonly inputs: HoldInputs };

const AXES_ON_FLOOR: readonly Axis[] = ['x', 'y'];

/** The border of the seat that reaches farthest past the feet, and how steady it stands there. */
function tipRows(model: Model, standing: Standing, { role, inputs }: Told): readonly HoldRow[] {
  const seat = bounds(partsAt(model, role.seat).map(part => part.box));
  const feet = bounds(standing.feet.map(part => part.box));
  if (seat === undefined || feet === undefined) return [];
  const middle = massCenter(standing.parts, inputs);
  const edges = AXES_ON_FLOOR.flatMap(axis => edgesAlong(axis, { seat, feet, middle }));
  const load = standing.load / (standing.people > 1 ? 2 : 1);
  const worst = edges
    .map(edge => ({ ...edge, ...tipping({ ...edge, weight: standing.wood, load }) }))
    .reduce((a, b) => (b.overhang > a.overhang ? b : a));
  return [tipRow(worst, load, { role, inputs })];
}

type Edge = { readonly overhang: Mm; readonly arm: Mm };

function edgesAlong(
  axis: Axis,
  at: { readonly seat: Box; readonly feet: Box; readonly middle: Readonly<Record<Axis, Mm>> },
): readonly Edge[] {
  const { seat, feet, middle } = at;
  return [
    { overhang: feet.min[axis] - seat.min[axis], arm: middle[axis] - feet.min[axis] },
    { overhang: seat.max[axis] - feet.max[axis], arm: feet.max[axis] - middle[axis] },
  ];
}

/** Middle of the wood's weight; all boards are of one wood. */
function massCenter(parts: readonly Part[], { species }: HoldInputs): Record<Axis, Mm> {
  const total = { x: 0, y: 0, z: 0 };
  let weight = 0;
  for (const part of parts) {
    const own = partWeight(part, species.density12.value);
    const size = part.solid.reduce((sum, box) => sum + volume(box), 0);
    for (const box of part.solid) {
      const share = (own * volume(box)) / size;
      const at = center(box);
      total.x += at.x * share;
      total.y += at.y * share;
      total.z += at.z * share;
    }
    weight += own;
  }
  return { x: total.x / weight, y: total.y / weight, z: total.z / weight };
}

type Tip = Edge & { readonly share: number; readonly mostLoad: Kilograms };

function tipRow(tip: Tip, load: Kilograms, { role, inputs }: Told): HoldRow {
  const { display } = inputs;
  const { overhang, share, mostLoad } = tip;
  const within = atMost(overhang, 0);
  const reach = formatLength(overhang, display);
  const steady = share <= STEADY_SHARE;
  const verdict = verdictOf(share);
  return {
    id: `${role.id}/tip`,
    say: `${role.say}: people on its edge or all at one end`,
    sum: within
      ? 'nowhere does the seat reach past the outer edges of the feet, so weight on it presses straight down between them'
      : `${formatWeight(load, display)} sits ${reach} outside the feet; ${formatWeight(mostLoad, display)} there would lift the other side, empty as it stands`,
    value: figure(
      overhang,
      'mm',
      within ? 'the seat ends inside the feet' : 'seat beyond the feet',
      COMPUTED,
    ),
    limit: 'inside the feet, or one and a half times as steady as the sum',
    verdict: verdict === 'holds by this sum' && !steady ? 'look again' : verdict,
    better:
      within || steady ? '' : 'Bring the feet out under the edge of the seat, or fix it down.',
    source: `${sourceText(TIPPING_SOURCE)}; ${sourceText(STEADY_SOURCE)}`,
  };
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
