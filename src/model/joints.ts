import type { Mm } from '../measure/quantities.js';
import {
  driveDepths,
  gluedArea,
  type JointPlace,
  jointPlaces,
  patchSides,
} from './joint-places.js';
import type { Axis, Contact, Joint, Part } from './part.js';
import type { TouchingPairs } from './touching-pairs.js';

/** Which parts are fastened to which, and how. */
export type JointPick = {
  readonly rule: string;
  readonly name: string;
  readonly with: Joint['with'];
  readonly glue: boolean;
  /** Axis of driving in the piece; otherwise the largest touching face decides. */
  readonly drive: Axis | undefined;
  readonly from: readonly Part[];
  readonly into: readonly Part[];
  /** Fasteners at a place whose sides are so long; undefined where that cannot be worked out. */
  each(sides: { readonly long: Mm; readonly short: Mm }): number | undefined;
};

/**
 * A joint for each place where a picked pair touches square to the driving axis. A pair that touches
 * elsewhere only has none, but all its faces count for glue.
 */
export function jointsOf(pick: JointPick, pairs: TouchingPairs): readonly Joint[] {
  const into = new Map(pick.into.map(part => [part.id, part]));
  return pick.from.flatMap(head =>
    [...(pairs.get(head.id) ?? [])].flatMap(([id, contacts]) => {
      const point = into.get(id);
      return point === undefined ? [] : jointsOfPair(pick, { head, point, contacts });
    }),
  );
}

type Pair = {
  readonly head: Part;
  readonly point: Part;
  readonly contacts: readonly Contact[];
};

function jointsOfPair(pick: JointPick, pair: Pair): readonly Joint[] {
  const area = gluedArea(pair.contacts);
  return jointPlaces(pair.contacts, pair.head.id, pick.drive).flatMap(place => {
    const each = pick.each(patchSides(place));
    return each === undefined ? [] : [joint(pick, pair, { place, each, area })];
  });
}

function joint(
  pick: JointPick,
  { head, point }: Pair,
  at: { readonly place: JointPlace; readonly each: number; readonly area: number },
): Joint {
  const { drive, patch } = at.place;
  return {
    rule: pick.rule,
    name: pick.name,
    with: pick.with,
    each: at.each,
    glue: pick.glue,
    from: head.id,
    into: point.id,
    drive,
    patch,
    ...driveDepths(at.place, head, point),
    grain: drive.axis === point.runs ? 'end' : 'side',
    gluedArea: at.area,
  };
}
