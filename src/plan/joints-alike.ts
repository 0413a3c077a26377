import { type BradChoice, bradFor, type NoBrad } from '../materials/brads.js';
import type { NoScrew, ScrewChoice } from '../materials/choose-screw.js';
import { screwName } from '../materials/screw-words.js';
import { lengthKey } from '../measure/tolerance.js';
import { extent } from '../model/box.js';
import { AXES, type Joint, type Part } from '../model/part.js';
import { screwWithRoom } from './screw-room.js';
import type { Setting } from './setting.js';

/** Joints of one name that are held alike: same wood under the head, same grain, same fastener. */
export type Alike = {
  readonly joints: readonly Joint[];
  readonly first: Joint;
  readonly chosen: Chosen;
};

type Chosen = ScrewChoice | NoScrew | BradChoice | NoBrad;

/** The joints that screws or brads hold, those of one kind together, each kind with its fastener chosen once. */
export function alikeJoints(
  joints: readonly Joint[],
  partById: ReadonlyMap<string, Part>,
  setting: Setting,
): readonly Alike[] {
  const alike = new Map<string, Joint[]>();
  const choices = new Map<string, Chosen>();
  const chosenByKey = new Map<string, Chosen>();
  for (const joint of joints.filter(it => it.with !== 'glue' && it.each > 0)) {
    const { name, with: kind, grain, through, holds, each } = joint;
    const sides = AXES.map(axis => lengthKey(extent(joint.patch, axis)));
    const wood = [name, kind, grain, lengthKey(through), lengthKey(holds), each, ...sides].join();
    const chosen = choices.get(wood) ?? choose(joint, partById.get(joint.from), setting);
    choices.set(wood, chosen);
    const key = [joint.name, joint.grain, lengthKey(joint.through), chosenName(chosen)].join();
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
  return chosen.kind === 'brad' ? lengthKey(chosen.length) : chosen.because;
}
