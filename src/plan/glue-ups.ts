import { CLAMP_SPACING, clampsBySpacing, FIRST_CLAMP } from '../materials/clamps.js';
import type { Minutes, Mm } from '../measure/quantities.js';
import { extent } from '../model/box.js';
import { AXES, type Box, type Joint, type Model } from '../model/part.js';
import { count } from '../text/plural.js';
import { brushingRoom, CLAMPING_MINUTES, minutesForJoint } from './glue-batch.js';

/** Joints that are brushed, closed and clamped in one go. */
export type GlueUp = {
  readonly number: number;
  /** Sub-assembly it belongs to, `planter_box/left.side/outer`; empty for the whole piece. */
  readonly of: string;
  readonly joints: readonly Joint[];
  /** Ids of the parts to lay out beforehand. */
  readonly parts: readonly string[];
  /** From the first brush stroke until the clamps are tight. */
  readonly minutes: Minutes;
  /** What to do, one line after the other. */
  readonly order: readonly string[];
  /** Clamps to lay out; screws and brads pull their own joints together. */
  readonly clamps: number;
  /** False when not even one joint fits the open time: a slower glue, or two people. */
  readonly fits: boolean;
};

export type GlueUpTimes = { readonly openMinutes: Minutes };

/**
 * Glue-ups in the order of the work: sub-assemblies before what they are part of, each whole where it
 * fits the open time, else cut between one kind of joint and the next as far as it goes.
 */
export function glueUps(
  model: Pick<Model, 'parts' | 'joints'>,
  { openMinutes }: GlueUpTimes,
  people: 1 | 2,
): readonly GlueUp[] {
  const room = brushingRoom({ openMinutes, clampingMinutes: CLAMPING_MINUTES });
  const names = new Map(model.parts.map(({ id, name }) => [id, name]));
  const glued = model.joints.filter(({ glue }) => glue);
  return subAssemblies(glued)
    .flatMap(([of, joints]) => batches(joints, room, people).map(batch => ({ of, batch })))
    .map(({ of, batch }, at) => ({
      number: at + 1,
      of,
      joints: batch,
      parts: partsOf(batch),
      minutes: brushing(batch, people) + CLAMPING_MINUTES,
      order: orderLines(batch, names),
      clamps: batch.reduce((sum, joint) => sum + clampsAt(joint), 0),
      fits: brushing(batch, people) <= room + 1e-9,
    }));
}

type Group = readonly [of: string, joints: readonly Joint[]];

/** Joints by the sub-assembly that holds both parts, the innermost first. */
function subAssemblies(joints: readonly Joint[]): readonly Group[] {
  const groups = new Map<string, Joint[]>();
  for (const joint of joints) {
    const of = sharedStand(joint.from, joint.into);
    groups.set(of, [...(groups.get(of) ?? []), joint]);
  }
  const depth = (of: string) => (of === '' ? 0 : of.split('.').length);
  return [...groups].sort(([a], [b]) => depth(b) - depth(a));
}

/** The stand that two parts have in common: `end/left.post/1`, `end/left.rail/2` share `end/left`. */
export function sharedStand(from: string, into: string): string {
  const stands = from.split('.').slice(0, -1);
  const others = into.split('.').slice(0, -1);
  const apart = stands.findIndex((stand, at) => stand !== others[at]);
  return (apart < 0 ? stands : stands.slice(0, apart)).join('.');
}

/** As few as fit, joints of one rule next to each other, in their order. */
function batches(
  joints: readonly Joint[],
  room: Minutes,
  people: 1 | 2,
): readonly (readonly Joint[])[] {
  const rules = [...new Set(joints.map(({ rule }) => rule))];
  const inOrder = rules.flatMap(rule => joints.filter(joint => joint.rule === rule));
  const found: Joint[][] = [];
  for (const joint of inOrder) {
    const open = found.at(-1);
    const fits = open !== undefined && brushing([...open, joint], people) <= room + 1e-9;
    if (fits) open.push(joint);
    else found.push([joint]);
  }
  return found;
}

function brushing(joints: readonly Joint[], people: 1 | 2): Minutes {
  return joints.reduce((sum, { gluedArea }) => sum + minutesForJoint(gluedArea, people), 0);
}

function partsOf(joints: readonly Joint[]): readonly string[] {
  return [...new Set(joints.flatMap(({ from, into }) => [into, from]))];
}

function clampsAt(joint: Joint): number {
  if (joint.with !== 'glue') return 0;
  return clampsBySpacing({
    joint: longestSide(joint.patch),
    end: FIRST_CLAMP.value,
    spacing: CLAMP_SPACING.value,
  });
}

function longestSide(box: Box): Mm {
  return Math.max(...AXES.map(axis => extent(box, axis)));
}

/** One line for each kind of joint, then squaring and clamping. */
function orderLines(
  joints: readonly Joint[],
  names: ReadonlyMap<string, string>,
): readonly string[] {
  const rules = [...new Set(joints.map(({ rule }) => rule))];
  const lines = rules.map(rule => {
    const alike = joints.filter(joint => joint.rule === rule);
    const [first] = alike;
    if (first === undefined) throw new Error('a rule without a joint');
    const pair = [first.from, first.into].map(id => (names.get(id) ?? id).toLowerCase());
    return `${first.name}: brush both faces, close ${pair.join(' on ')}, ${count(alike.length, 'joint')}${fixing(first)}.`;
  });
  return [
    'Lay the parts out in their places, marks up, and close them dry once.',
    ...lines,
    'Check both diagonals, tighten, check them again, wipe the squeeze-out.',
  ];
}

function fixing({ with: held, each }: Joint): string {
  if (held === 'glue') return ', clamp';
  return `, ${count(each, held)} each`;
}
