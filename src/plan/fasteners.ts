import { BRAD_SOURCE, bradFor } from '../materials/brads.js';
import { chooseScrew, type NoScrew, type ScrewChoice } from '../materials/choose-screw.js';
import { screwName } from '../materials/screw-words.js';
import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatLengthExact } from '../measure/format-length.js';
import type { Mm } from '../measure/quantities.js';
import type { Joint, Model, Part } from '../model/part.js';
import type { FastenerRow } from './plan.js';
import type { Setting } from './setting.js';

/** Joints of one rule that are held alike: same wood under the head, same wood behind. */
type Alike = { readonly joints: readonly Joint[]; readonly first: Joint };

export type Fasteners = {
  readonly rows: readonly FastenerRow[];
  readonly troubles: readonly string[];
};

/**
 * Screws and brads from the wood that is really there at each joint. A joint that no screw suits is a
 * trouble, told with what it would need; it is never given a screw that comes through.
 */
export function fasteners(model: Model, setting: Setting): Fasteners {
  const partById = new Map(model.parts.map(part => [part.id, part]));
  const rows: FastenerRow[] = [];
  const troubles: string[] = [];
  for (const alike of alikeJoints(model.joints)) {
    const made =
      alike.first.with === 'brad' ? bradRow(alike, setting) : screwRow(alike, partById, setting);
    if (typeof made === 'string') troubles.push(made);
    else rows.push(made);
  }
  return { rows: numbered(rows), troubles };
}

function alikeJoints(joints: readonly Joint[]): readonly Alike[] {
  const alike = new Map<string, Joint[]>();
  for (const joint of joints.filter(it => it.with !== 'glue' && it.each > 0)) {
    const key = [joint.rule, joint.grain, round(joint.through), round(joint.holds)].join();
    const same = alike.get(key);
    if (same) same.push(joint);
    else alike.set(key, [joint]);
  }
  return [...alike.values()].flatMap(same => {
    const [first] = same;
    return first ? [{ joints: same, first }] : [];
  });
}

function round(length: Mm): string {
  return length.toFixed(3);
}

function screwRow(
  { joints, first }: Alike,
  partById: ReadonlyMap<string, Part>,
  setting: Setting,
): FastenerRow | string {
  const { through, holds, grain } = first;
  const choice = chooseScrew(
    { through, into: holds, grain, wood: setting.species },
    setting.display,
  );
  if (choice.kind === 'no-screw') return `${first.name}: ${choice.because}. ${choice.suggestion}`;
  const without = plainButt(first, partById.get(first.from), setting);
  return {
    id: first.rule,
    joint: first.name,
    kind: 'screw',
    what: screwName(choice),
    length: figure(choice.length, 'mm', choice.because, choice.source),
    ...woodFigures(first, choice.bite),
    clearance: figure(
      choice.holes.clearance.value,
      'mm',
      'so that the thread does not hold the pieces apart',
      choice.holes.clearance.source,
    ),
    pilot: figure(
      choice.holes.pilot.value,
      'mm',
      `for a No. ${choice.gauge} in ${setting.species.name}`,
      choice.holes.pilot.source,
    ),
    countersink: figure(
      choice.holes.countersink.depth.value,
      'mm',
      'so that the head sits just below the face',
      choice.holes.countersink.depth.source,
    ),
    drills: drillWords(choice),
    grain,
    ...counts(joints),
    notes: choice.notes,
    ...(without === undefined ? {} : { without }),
  };
}

function drillWords({ holes }: ScrewChoice): string {
  return `clearance ${holes.clearance.drill}, pilot ${holes.pilot.drill}`;
}

function woodFigures(joint: Joint, bite: Mm) {
  return {
    through: figure(joint.through, 'mm', 'wood under the head, as it is after notching', COMPUTED),
    bite: figure(bite, 'mm', 'length of the fastener less the wood under its head', COMPUTED),
  };
}

function counts(joints: readonly Joint[]) {
  const each = Math.max(...joints.map(joint => joint.each));
  const count = joints.reduce((sum, joint) => sum + joint.each, 0);
  return { each, places: joints.length, count };
}

/** What the same joint would need without its notch, told where the notch is what makes it short. */
function plainButt(joint: Joint, from: Part | undefined, setting: Setting): string | undefined {
  if (!from) return undefined;
  const { axis } = joint.drive;
  const whole = from.box.max[axis] - from.box.min[axis];
  if (whole <= joint.through + 1) return undefined;
  const plain = chooseScrew(
    { through: whole, into: joint.holds + whole, grain: joint.grain, wood: setting.species },
    setting.display,
  );
  return plainWords(plain, whole, setting);
}

function plainWords(plain: ScrewChoice | NoScrew, whole: Mm, { display }: Setting): string {
  const length = (value: Mm) => formatLengthExact(value, display);
  const needed = plain.kind === 'screw' ? plain.length : plain.needed;
  return `without the notch the screw would go through ${length(whole)} and need ${length(needed)}`;
}

function bradRow({ joints, first }: Alike, setting: Setting): FastenerRow | string {
  const brad = bradFor(first.through, first.holds);
  if (brad.kind === 'no-brad') return `${first.name}: ${brad.because}`;
  return {
    id: first.rule,
    joint: first.name,
    kind: 'brad',
    what: `18 gauge brad, ${formatLengthExact(brad.length, setting.display)}`,
    length: figure(brad.length, 'mm', brad.because, BRAD_SOURCE),
    ...woodFigures(first, brad.bite),
    drills: 'none',
    grain: first.grain,
    ...counts(joints),
    notes: [],
  };
}

/** Rows of one rule that differ get a number behind the rule's name. */
function numbered(rows: readonly FastenerRow[]): readonly FastenerRow[] {
  const seen = new Map<string, number>();
  return rows.map(row => {
    const before = seen.get(row.id) ?? 0;
    seen.set(row.id, before + 1);
    return before === 0 ? row : { ...row, id: `${row.id}/${before + 1}` };
  });
}
