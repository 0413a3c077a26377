import { BRAD_SOURCE, type BradChoice, bradFor, type NoBrad } from '../materials/brads.js';
import { chooseScrew, type NoScrew, type ScrewChoice } from '../materials/choose-screw.js';
import { screwName } from '../materials/screw-words.js';
import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatLengthExact } from '../measure/format-length.js';
import type { Mm } from '../measure/quantities.js';
import { extent } from '../model/box.js';
import { AXES, type Joint, type Model, type Part } from '../model/part.js';
import type { FastenerRow } from './plan.js';
import { screwAsSold } from './screw-as-sold.js';
import { screwRoom, screwWithRoom } from './screw-room.js';
import type { Setting } from './setting.js';

/** Joints of one name that are held alike: same wood under the head, same grain, same fastener. */
type Alike = { readonly joints: readonly Joint[]; readonly first: Joint; readonly chosen: Chosen };

type Chosen = ScrewChoice | NoScrew | BradChoice | NoBrad;

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
  for (const alike of alikeJoints(model.joints, partById, setting)) {
    const { chosen, first } = alike;
    if (chosen.kind === 'screw') rows.push(screwRow(alike, chosen, partById, setting));
    else if (chosen.kind === 'brad') rows.push(bradRow(alike, chosen, setting));
    else troubles.push(troubleWords(first, chosen));
  }
  return { rows: numbered(rows), troubles };
}

function troubleWords({ name }: Joint, none: NoScrew | NoBrad): string {
  const advice = none.kind === 'no-screw' ? `. ${none.suggestion}` : '';
  return `${name}: ${none.because}${advice}`;
}

function alikeJoints(
  joints: readonly Joint[],
  partById: ReadonlyMap<string, Part>,
  setting: Setting,
): readonly Alike[] {
  const alike = new Map<string, Joint[]>();
  const choices = new Map<string, Chosen>();
  const chosenByKey = new Map<string, Chosen>();
  for (const joint of joints.filter(it => it.with !== 'glue' && it.each > 0)) {
    const { name, with: kind, grain, through, holds, each } = joint;
    const sides = AXES.map(axis => round(extent(joint.patch, axis)));
    const wood = [name, kind, grain, round(through), round(holds), each, ...sides].join();
    const chosen = choices.get(wood) ?? choose(joint, partById.get(joint.from), setting);
    choices.set(wood, chosen);
    const key = [joint.name, joint.grain, round(joint.through), chosenName(chosen)].join();
    chosenByKey.set(key, chosen);
    const same = alike.get(key);
    if (same) same.push(joint);
    else alike.set(key, [joint]);
  }
  return [...alike].flatMap(([key, same]) => {
    const [first] = same;
    const chosen = chosenByKey.get(key);
    return first && chosen ? [{ joints: same, first, chosen }] : [];
  });
}

function choose(joint: Joint, from: Part | undefined, setting: Setting): Chosen {
  if (joint.with === 'brad') return bradFor(joint.through, joint.holds);
  return screwWithRoom(joint, from, setting);
}

function chosenName(chosen: Chosen): string {
  if (chosen.kind === 'screw') return screwName(chosen);
  return chosen.kind === 'brad' ? round(chosen.length) : chosen.because;
}

function round(length: Mm): string {
  return length.toFixed(3);
}

function screwRow(
  { joints, first }: Alike,
  choice: ScrewChoice,
  partById: ReadonlyMap<string, Part>,
  setting: Setting,
): FastenerRow {
  const { grain } = first;
  const without = plainButt(first, partById.get(first.from), setting);
  const room = screwRoom(joints, partById, { gauge: choice.gauge, setting });
  const sold = screwAsSold(choice, setting.display);
  const { countersink } = choice.holes;
  const forWood = `for a No. ${choice.gauge} in ${setting.species.name}`;
  return {
    id: first.rule,
    joint: first.name,
    kind: 'screw',
    what: sold.name,
    length: figure(sold.length, 'mm', sold.because, sold.source),
    ...woodFigures(first, sold.length - first.through),
    clearance: figure(sold.clearance.value, 'mm', CLEAR, sold.clearance.source),
    pilot: figure(sold.pilot.value, 'mm', forWood, sold.pilot.source),
    countersink: figure(countersink.depth.value, 'mm', FLUSH, countersink.depth.source),
    drills: sold.drills,
    grain,
    ...counts(joints),
    where: room.where,
    spots: room.spots,
    notes: [...choice.notes, ...room.notes],
    noRoom: room.noRoom,
    ...(without === undefined ? {} : { without }),
  };
}

const CLEAR = 'so that the thread does not hold the pieces apart';
const FLUSH = 'so that the head sits just below the face';

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
  const whole = extent(from.box, axis);
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

function bradRow({ joints, first }: Alike, brad: BradChoice, setting: Setting): FastenerRow {
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
    where: [],
    spots: [],
    notes: [],
    noRoom: [],
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
