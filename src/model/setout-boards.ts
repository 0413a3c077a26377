import type { Place } from '../recipe/place.js';
import { clashesOf } from './clashes.js';
import type { Part } from './part.js';
import type { Draft, NotchDraft } from './setout-draft.js';
import type { Slate } from './setout-slate.js';
import { cutNotches, solidOf } from './solid.js';

/** The boards with their notches cut. A board of which nothing is left is a problem. */
export function cutBoards(drafts: readonly Draft[], slate: Slate): readonly Part[] {
  return drafts.map(draft => {
    const notches = cutNotches(draft.notches.map(notch => named(notch, drafts)));
    const solid = solidOf(draft.box, notches);
    if (solid.length === 0) {
      slate.note({ kind: { is: 'nothing-left', part: draft.id }, at: draft.at });
    }
    const { id, path, name, board, section, runs, face, length, box, loose } = draft;
    return { id, path, name, board, section, runs, face, length, box, notches, solid, loose };
  });
}

/** Notes every two boards that fill the same space. */
export function noteClashes(
  parts: readonly Part[],
  places: ReadonlyMap<string, Place>,
  slate: Slate,
): void {
  for (const { a, b, where } of clashesOf(parts)) {
    const at = places.get(a);
    if (at === undefined) throw new Error(`${a} stands there and no rule put it there`);
    const { min, max } = where;
    const sides = [max.x - min.x, max.y - min.y, max.z - min.z] as const;
    const corner = [min.x, min.y, min.z] as const;
    slate.note({ kind: { is: 'boards-overlap', a, b, sides, corner }, at });
  }
}

function named(notch: NotchDraft, drafts: readonly Draft[]) {
  const other = drafts[notch.for];
  if (other === undefined) throw new Error(`a notch makes room for part ${notch.for}, not there`);
  return { rule: notch.rule, box: notch.box, for: other.id };
}
