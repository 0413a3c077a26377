import { verdictOf } from '../materials/beam-check.js';
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
import type { Standing } from './hold-weights.js';

export type Told = { readonly role: StandRole; readonly inputs: HoldInputs };

const AXES_ON_FLOOR: readonly Axis[] = ['x', 'y'];

/** The border of the seat that reaches farthest past the feet, and how steady it stands there. */
export function tipRows(
  model: Model,
  standing: Standing,
  { role, inputs }: Told,
): readonly HoldRow[] {
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
      Math.max(0, overhang),
      'mm',
      within ? 'the seat ends over the feet' : 'seat beyond the feet',
      COMPUTED,
    ),
    limit: within
      ? 'not beyond the feet'
      : 'beyond the feet only where it is one and a half times as steady as need be',
    verdict: verdict === 'holds by this sum' && !steady ? 'look again' : verdict,
    better:
      within || steady ? '' : 'Bring the feet out under the edge of the seat, or fix it down.',
    source: `${sourceText(TIPPING_SOURCE)}; ${sourceText(STEADY_SOURCE)}`,
  };
}
