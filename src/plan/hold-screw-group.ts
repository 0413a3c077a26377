import type { ScrewChoice } from '../materials/choose-screw.js';
import type { LoadTime } from '../materials/design-factors-nds.js';
import { screwSideways } from '../materials/screw-strength.js';
import type { Display, Kilograms } from '../measure/quantities.js';
import { lengthKey } from '../measure/tolerance.js';
import { extent } from '../model/box.js';
import { AXES, type Joint, type Part } from '../model/part.js';
import type { HoldInputs, ScrewRole } from './hold-row.js';
import { screwAsSold } from './screw-as-sold.js';
import { screwWithRoom } from './screw-room.js';

/** A push lasts a moment; pots hang there for good. */
const TIME: Readonly<Record<ScrewRole['carries'], LoadTime>> = {
  pots: 'permanent',
  push: 'ten-minutes',
};

/** The screws that one part hangs on. */
export type Group = {
  readonly count: number;
  readonly each: Kilograms;
  readonly total: Kilograms;
  readonly names: string;
};

/** What the sums need besides the joints: the boards under the heads, and joints worked out before. */
export type ScrewInputs = HoldInputs & {
  readonly partById: ReadonlyMap<string, Part>;
  readonly known: Map<string, Strength>;
};

export type Strength = { readonly each: Kilograms; readonly count: number; readonly name: string };

/** How many screws these joints have, and what all of them carry sideways. */
export function groupOf(joints: readonly Joint[], role: ScrewRole, inputs: ScrewInputs): Group {
  const held = joints.map(joint => strengthOnce(joint, role, inputs));
  const total = held.reduce((sum, { each, count }) => sum + each * count, 0);
  const count = joints.reduce((sum, joint) => sum + joint.each, 0);
  const names = [...new Set(held.map(({ name }) => name))].join(' and ');
  return { count, total, each: count === 0 ? 0 : total / count, names };
}

/** Thirteen slats on two rails are a few kinds of joint: each is worked out once. */
function strengthOnce(joint: Joint, role: ScrewRole, inputs: ScrewInputs): Strength {
  const { through, holds, grain, each, patch } = joint;
  const sides = AXES.map(axis => lengthKey(extent(patch, axis)));
  const key = [lengthKey(through), lengthKey(holds), grain, each, ...sides].join();
  const known = inputs.known.get(key) ?? strengthOfJoint(joint, role, inputs);
  inputs.known.set(key, known);
  return known;
}

function strengthOfJoint(joint: Joint, { carries }: ScrewRole, inputs: ScrewInputs): Strength {
  const { species, wet, display, partById } = inputs;
  const choice = screwWithRoom(joint, partById.get(joint.from), inputs);
  if (choice.kind === 'no-screw') return { each: 0, count: joint.each, name: 'no screw that fits' };
  return {
    each: sidewaysEach(choice, joint, { wet, time: TIME[carries], gravity: species.gravity.value }),
    count: joint.each,
    name: nameOf(choice, display),
  };
}

/** A metric screw is reckoned as the gauge that it stands for, and says so. */
function nameOf(choice: ScrewChoice, display: Display): string {
  const { name } = screwAsSold(choice, display);
  return display.system === 'metric' ? `${name}, reckoned as No. ${choice.gauge}` : name;
}

function sidewaysEach(
  { gauge, bite }: ScrewChoice,
  { through, grain }: Joint,
  place: { readonly wet: boolean; readonly time: LoadTime; readonly gravity: number },
): Kilograms {
  const { wet, time, gravity } = place;
  const gravities = { sideGravity: gravity, mainGravity: gravity };
  return screwSideways({ gauge, through, bite, grain, wet, time, ...gravities })?.each ?? 0;
}
