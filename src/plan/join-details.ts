import { formatLengthExact } from '../measure/format-length.js';
import type { Joint } from '../model/part.js';
import type { FastenerRow, Step } from './plan.js';
import type { Worked } from './steps.js';

/** What a step that closes joints shows: which fastener, which drills, how many, and glue times. */
export function joinDetails(
  joints: readonly Joint[],
  worked: Worked,
): Pick<Step, 'settings' | 'big'> {
  const rows = fastenersOf(joints, worked.fasteners);
  const lines = rows.flatMap(row => fastenerLines(row, joints, worked));
  const glued = joints.some(joint => joint.glue);
  const screw = rows.find(row => row.kind === 'screw');
  return {
    settings: [...lines, ...(glued ? [{ name: 'Glue', text: worked.glue.kind }] : [])],
    ...(screw === undefined ? {} : { big: { text: screw.what, caption: screw.joint } }),
  };
}

function fastenersOf(
  joints: readonly Joint[],
  rows: readonly FastenerRow[],
): readonly FastenerRow[] {
  return rows.filter(row => joints.some(joint => heldBy(row, joint)));
}

/** A row stands for joints of one name that hold the same wood in the same way. */
function heldBy(row: FastenerRow, joint: Joint): boolean {
  return (
    joint.name === row.joint &&
    joint.grain === row.grain &&
    Math.abs(joint.through - row.through.value) < 0.01
  );
}

function fastenerLines(
  row: FastenerRow,
  joints: readonly Joint[],
  { display }: Worked,
): Step['settings'] {
  const count = joints
    .filter(joint => heldBy(row, joint))
    .reduce((sum, joint) => sum + joint.each, 0);
  const name = row.kind === 'screw' ? 'Screws' : 'Brads';
  return [
    { name, text: `${count} x ${row.what} (${row.joint.toLowerCase()})` },
    ...(row.kind === 'screw' ? [{ name: 'Drills', text: row.drills }] : []),
    ...(row.kind === 'screw'
      ? [
          ...row.where.map(words => ({ name: 'Where', text: words })),
          {
            name: 'Bite',
            text: `${formatLengthExact(row.bite.value, display)} into ${row.grain} grain`,
          },
        ]
      : []),
  ];
}

type Counted = Pick<FastenerRow, 'kind' | 'what' | 'joint' | 'count'>;

/**
 * What a step shows that counts out fasteners: a cup for each joint, those out of one box after one another, and all of
 * them by their boxes. Brads have no cups: they stay in their strips.
 */
export function cupDetails(
  fasteners: readonly Counted[],
): Required<Pick<Step, 'settings' | 'tally' | 'cups'>> {
  const screwsFirst = fasteners.toSorted((a, b) => b.kind.localeCompare(a.kind));
  const boxes = [...new Set(screwsFirst.map(({ what }) => what))].map(what =>
    fasteners.filter(row => row.what === what),
  );
  const cups = boxes
    .flat()
    .filter(({ kind }) => kind === 'screw')
    .map(({ count, what, joint }) => ({ count, what, joint }));
  return {
    settings: boxes.flatMap(([first, ...others]) =>
      first === undefined ? [] : [boxLine([first, ...others])],
    ),
    tally: { of: 'cup', count: cups.length },
    cups,
  };
}

/** `No. 10 x 3-1/2 in: 76 rail over post, 52 slat to seat rail`. */
function boxLine(rows: readonly [Counted, ...Counted[]]): Step['settings'][number] {
  const [{ kind, what }] = rows;
  const joints = rows.map(({ count, joint }) => `${count} ${joint.toLowerCase()}`);
  return { name: kind === 'screw' ? 'Screws' : 'Brads', text: `${what}: ${joints.join(', ')}` };
}
