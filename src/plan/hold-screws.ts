import { verdictOf } from '../materials/beam-check.js';
import { chooseScrew, type ScrewChoice } from '../materials/choose-screw.js';
import type { LoadTime } from '../materials/design-factors-nds.js';
import { PERSON } from '../materials/loads.js';
import { BITE_FACTOR_SOURCE, screwSideways, screwsNeeded } from '../materials/screw-strength.js';
import { screwName } from '../materials/screw-words.js';
import { YIELD_SOURCE } from '../materials/yield-model.js';
import { COMPUTED } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import { formatNumber } from '../measure/format-number.js';
import type { Kilograms } from '../measure/quantities.js';
import { formatWeight } from '../measure/weight.js';
import type { Joint, Model } from '../model/part.js';
import type { HoldInputs, HoldRow, ScrewRole } from './hold-row.js';
import { selectJoints } from './select.js';

/** A push lasts a moment; pots hang there for good. */
const TIME: Readonly<Record<ScrewRole['carries'], LoadTime>> = {
  pots: 'permanent',
  push: 'ten-minutes',
};

/** Screws across their length, by the part that hangs on them: the weakest part is told. */
export function screwRows(model: Model, role: ScrewRole, inputs: HoldInputs): readonly HoldRow[] {
  const joints = selectJoints(model, [role.joint]).filter(joint => joint.with === 'screw');
  const parts = [...new Set(joints.map(joint => joint.from))];
  const load = role.carries === 'pots' ? inputs.pots.soaked / parts.length : PERSON.value;
  if (parts.length === 0 || load <= 0) return [];
  const groups = parts.map(part =>
    groupOf(
      joints.filter(joint => joint.from === part),
      role,
      inputs,
    ),
  );
  const weakest = groups.reduce((a, b) => (b.total < a.total ? b : a));
  return [screwRow(role, { group: weakest, load, inputs })];
}

type Group = {
  readonly count: number;
  readonly each: Kilograms;
  readonly total: Kilograms;
  readonly names: string;
};

function groupOf(joints: readonly Joint[], role: ScrewRole, inputs: HoldInputs): Group {
  const held = joints.map(joint => strengthOfJoint(joint, role, inputs));
  const total = held.reduce((sum, { each, count }) => sum + each * count, 0);
  const count = joints.reduce((sum, joint) => sum + joint.each, 0);
  const names = [...new Set(held.map(({ name }) => name))].join(' and ');
  return { count, total, each: count === 0 ? 0 : total / count, names };
}

function strengthOfJoint(joint: Joint, { carries }: ScrewRole, inputs: HoldInputs) {
  const { species, wet, display } = inputs;
  const choice = chooseScrew(
    { through: joint.through, into: joint.holds, grain: joint.grain, wood: species },
    display,
  );
  if (choice.kind === 'no-screw') return { each: 0, count: joint.each, name: 'no screw that fits' };
  return {
    each: sidewaysEach(choice, joint, { wet, time: TIME[carries], gravity: species.gravity.value }),
    count: joint.each,
    name: screwName(choice),
  };
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

function screwRow(
  { id, say, carries }: ScrewRole,
  { group, load, inputs }: { group: Group; load: Kilograms; inputs: HoldInputs },
): HoldRow {
  const { display } = inputs;
  const share = load / group.total;
  const verdict = verdictOf(share);
  const needed = screwsNeeded(load, group.each);
  const what = carries === 'pots' ? 'its share of the soaked pots' : 'one heavy person pushing';
  return {
    id: `${id}/screws`,
    say,
    sum: `${group.count} x ${group.names}, each ${formatWeight(group.each, display)} sideways${inputs.wet ? ', wet' : ''}, carry ${formatWeight(group.total, display)}; ${what} is ${formatWeight(load, display)}`,
    value: figure(group.total, 'kg', `${formatNumber(share * 100, 0)}% of it is used`, COMPUTED),
    limit: `at least ${formatWeight(load, display)}`,
    verdict,
    better: verdict === 'holds by this sum' ? '' : betterScrews(needed, group.count),
    source: `${sourceText(YIELD_SOURCE)}; ${sourceText(BITE_FACTOR_SOURCE)}`,
  };
}

function betterScrews(needed: number | undefined, count: number): string {
  if (needed === undefined) return 'These screws carry nothing here: put a block under the board.';
  const more = Math.max(needed, count + 1);
  return `Drive ${more} screws where there are ${count}, or put a block under the board so that it stands on wood.`;
}
