import { BRAD_SOURCE, type BradChoice, type NoBrad } from '../materials/brads.js';
import { chooseScrew, type NoScrew, type ScrewChoice } from '../materials/choose-screw.js';
import { COMPUTED } from '../measure/figure.js';
import { figure } from '../measure/figure-text.js';
import { formatLengthExact } from '../measure/format-length.js';
import type { Mm } from '../measure/quantities.js';
import { extent } from '../model/box.js';
import type { Joint, Model, Part } from '../model/part.js';
import { type Alike, alikeJoints } from './joints-alike.js';
import type { FastenerRow } from './plan.js';
import { screwAsSold } from './screw-as-sold.js';
import { screwRoom } from './screw-room.js';
import type { Setting } from './setting.js';

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
