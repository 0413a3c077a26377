import { bounds } from './box.js';
import { clashesOf } from './clashes.js';
import { contactsOf } from './contacts.js';
import type { Model, Part } from './part.js';
import type { Built, Draft, NotchDraft } from './setout-draft.js';
import { closeJoints } from './setout-joints.js';
import type { Slate } from './setout-slate.js';
import { cutNotches, solidOf } from './solid.js';

const NOWHERE = { min: { x: 0, y: 0, z: 0 }, max: { x: 0, y: 0, z: 0 } };

/**
 * The boards with their notches cut, where they touch and how they are joined. Boards that fill the same
 * space, boards of which nothing is left and joints that never close are noted on the slate.
 */
export function standBoards({ parts: drafts, spreads, joints: rules }: Built, slate: Slate): Model {
  const parts = cutBoards(drafts, slate);
  noteClashes(parts, drafts, slate);
  const contacts = contactsOf(parts);
  const joints = closeJoints(rules, parts, { contacts, slate });
  const overall = bounds(parts.map(part => part.box)) ?? NOWHERE;
  return { parts, contacts, joints, spreads, overall };
}

function cutBoards(drafts: readonly Draft[], slate: Slate): readonly Part[] {
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

function noteClashes(parts: readonly Part[], drafts: readonly Draft[], slate: Slate): void {
  const clashes = clashesOf(parts);
  if (clashes.length === 0) return;
  const places = new Map(drafts.map(({ id, at }) => [id, at]));
  for (const { a, b, where } of clashes) {
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
