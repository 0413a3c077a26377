import type { Mm } from '../measure/quantities.js';
import { atMost } from '../measure/tolerance.js';
import { bounds, extent } from './box.js';
import { type Clash, clashesOf } from './clashes.js';
import { contactsOf } from './contacts.js';
import { AXES, type Box, type Model, type Part } from './part.js';
import type { Built, Draft, NotchDraft } from './setout-draft.js';
import { closeJoints } from './setout-joints.js';
import type { Slate } from './setout-slate.js';
import { cutNotches, solidOf } from './solid.js';

/** The boards, and those that come a little too close. */
export type Stood = { readonly model: Model; readonly tight: readonly Clash[] };

const NOWHERE = { min: { x: 0, y: 0, z: 0 }, max: { x: 0, y: 0, z: 0 } };

/**
 * The boards with their notches cut, where they touch and how they are joined. Boards that fill the same
 * space, boards of which nothing is left and joints that never close are noted on the slate; an overlap
 * of no more than `told` is told beside the model instead.
 */
export function standBoards(
  { parts: drafts, spreads, joints: rules }: Built,
  slate: Slate,
  told: Mm,
): Stood {
  const parts = cutBoards(drafts, slate);
  const clashes = clashesOf(parts);
  const tight = clashes.filter(({ where }) => atMost(thinnest(where), told));
  noteClashes(
    clashes.filter(clash => !tight.includes(clash)),
    drafts,
    slate,
  );
  const contacts = contactsOf(parts);
  const joints = closeJoints(rules, parts, { contacts, slate });
  const overall = bounds(parts.map(part => part.box)) ?? NOWHERE;
  return { model: { parts, contacts, joints, spreads, overall }, tight };
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

/** How far one board reaches into the other. */
export function thinnest(where: Box): Mm {
  return Math.min(...AXES.map(axis => extent(where, axis)));
}

function noteClashes(clashes: readonly Clash[], drafts: readonly Draft[], slate: Slate): void {
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
