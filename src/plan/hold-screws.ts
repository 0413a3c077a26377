import { verdictOf } from '../materials/beam-check.js';
import { PERSON } from '../materials/loads.js';
import { BITE_FACTOR_SOURCE, screwsNeeded } from '../materials/screw-strength.js';
import { YIELD_SOURCE } from '../materials/yield-model.js';
import { COMPUTED } from '../measure/figure.js';
import { figure, sourceText } from '../measure/figure-text.js';
import { formatNumber } from '../measure/format-number.js';
import type { Kilograms } from '../measure/quantities.js';
import { formatWeight } from '../measure/weight.js';
import type { Model } from '../model/part.js';
import type { HoldInputs, HoldRow, ScrewRole } from './hold-row.js';
import { type Group, groupOf, type Strength } from './hold-screw-group.js';
import { selectJoints } from './select.js';

/** Screws across their length, by the part that hangs on them: the weakest part is told. */
export function screwRows(model: Model, role: ScrewRole, inputs: HoldInputs): readonly HoldRow[] {
  const joints = selectJoints(model, [role.joint]).filter(joint => joint.with === 'screw');
  const parts = [...new Set(joints.map(joint => joint.from))];
  const load = role.carries === 'pots' ? inputs.pots.soaked / parts.length : PERSON.value;
  if (parts.length === 0 || load <= 0) return [];
  const partById = new Map(model.parts.map(part => [part.id, part]));
  const known = new Map<string, Strength>();
  const groups = parts.map(part => {
    const own = joints.filter(joint => joint.from === part);
    return groupOf(own, role, { ...inputs, partById, known });
  });
  const weakest = groups.reduce((a, b) => (b.total < a.total ? b : a));
  return [screwRow(role, { group: weakest, load, inputs })];
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
