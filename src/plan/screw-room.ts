import { chooseScrew } from '../materials/choose-screw.js';
import type { ScrewContact } from '../materials/screw-spacing.js';
import { lengthKey } from '../measure/tolerance.js';
import type { Joint, Part } from '../model/part.js';
import { count } from '../text/plural.js';
import { onTheTape } from './on-tape.js';
import type { ScrewSpots } from './plan.js';
import { placesIn, placeWords } from './screw-lines.js';
import { contactOf } from './screw-overlap.js';
import { type Held, playNotes } from './screw-play.js';
import type { Setting } from './setting.js';

/** Where the screws of alike joints stand, what to heed there, and overlaps that have no room for them. */
export type ScrewRoom = {
  readonly where: readonly string[];
  readonly notes: readonly string[];
  readonly noRoom: readonly string[];
  readonly spots: readonly ScrewSpots[];
};

const NOTHING: ScrewRoom = { where: [], notes: [], noRoom: [], spots: [] };

type Screw = Pick<Held, 'gauge' | 'setting'>;

/** Looks at every different overlap of joints that take the same screw. */
export function screwRoom(
  joints: readonly Joint[],
  partById: ReadonlyMap<string, Part>,
  screw: Screw,
): ScrewRoom {
  const overlaps = new Map<string, ScrewRoom>();
  for (const joint of joints) {
    const from = partById.get(joint.from);
    const into = partById.get(joint.into);
    if (from === undefined || into === undefined) continue;
    const contact = contactOf(joint, from);
    if (contact === undefined) continue;
    const { length, width, ends } = contact;
    const key = [lengthKey(length), lengthKey(width), ends, joint.each].join();
    if (!overlaps.has(key)) overlaps.set(key, roomOf(contact, { joint, from, into, ...screw }));
  }
  const found = [...overlaps.values()];
  const once = (lines: readonly string[]) => [...new Set(lines)];
  return {
    where: once(found.flatMap(({ where }) => where)),
    notes: once(found.flatMap(({ notes }) => notes)),
    noRoom: once(found.flatMap(({ noRoom }) => noRoom)),
    spots: found.flatMap(({ spots }) => spots),
  };
}

function roomOf(contact: ScrewContact, held: Held): ScrewRoom {
  const { joint, gauge, setting } = held;
  const { display } = setting;
  const found = placesIn(contact, { each: joint.each, gauge }, display);
  if (found.kind === 'no-room') {
    return { ...NOTHING, noRoom: [`${joint.name}, does not fit: ${found.because}.`] };
  }
  if (found.places.length === 0) return NOTHING;
  const overlap = `${onTheTape(contact.length, display)} x ${onTheTape(contact.width, display)}`;
  const words = placeWords(found.places, contact, display);
  const where = `${count(joint.each, 'screw')} on ${overlap}: ${words}`;
  const { from, into, drive, patch } = joint;
  const spots = [{ from, into, drive, patch, places: found.places }];
  return { ...NOTHING, where: [where], notes: playNotes(found.places, held), spots };
}

/** A lighter screw where the usual one has no room at its least distances; the usual one where none has. */
export function screwWithRoom(
  joint: Joint,
  from: Part | undefined,
  { species, display }: Pick<Setting, 'species' | 'display'>,
): Chosen {
  const { through, holds, grain, each } = joint;
  const wood = { through, into: holds, grain, wood: species };
  const usual = chooseScrew(wood, display);
  const contact = from === undefined ? undefined : contactOf(joint, from);
  if (usual.kind !== 'screw' || contact === undefined) return usual;
  const hasRoom = (gauge: number) => placesIn(contact, { each, gauge }, display).kind === 'places';
  if (hasRoom(usual.gauge)) return usual;
  for (const gauge of LIGHTER.filter(it => it < usual.gauge && hasRoom(it))) {
    const lighter = chooseScrew({ ...wood, gauge }, display);
    if (lighter.kind === 'screw' && !lighter.short) {
      return { ...lighter, notes: [...lighter.notes, lighterWords(joint)] };
    }
  }
  return usual;
}

type Chosen = ReturnType<typeof chooseScrew>;

const LIGHTER = [8, 6];

function lighterWords({ name, each }: Joint): string {
  return `${name}: a lighter screw, since ${each} of the usual ones would stand too near to the ends or to each other.`;
}
