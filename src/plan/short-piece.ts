import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { atMost, lessThan, sameLength } from '../measure/tolerance.js';
import type { Contact, Model, Part } from '../model/part.js';
import type { CutRow, Plan } from './plan.js';

/** A piece that measures less than it should, and whether that matters where it goes. */
export type ShortPiece = {
  readonly by: Mm;
  /** It may be built in as it is. */
  readonly isGood: boolean;
  /** Names of the boards that its ends meet. */
  readonly meets: readonly string[];
  /** Nothing meets its ends. */
  readonly isFree: boolean;
  readonly isNotched: boolean;
};

/** What a stop gives from piece to piece; common practice, and what the steps check the first piece by. */
const AS_CUT: Mm = inches(1 / 32);
/** A gap at an end that bears nothing is let be up to this; common practice. */
const GAP: Mm = inches(1 / 16);
/** Where nothing meets an end, a blade's width only shows; a judgment of ours. */
const SHOWS: Mm = inches(1 / 8);

/**
 * A piece measured again; undefined where it is not short. A rail 1/16 in short whose ends meet two posts
 * leaves a gap that is let be; a slat with free ends may be 1/8 in short.
 */
export function shortPiece(row: CutRow, measured: Mm, { model }: Plan): ShortPiece | undefined {
  const by = row.length.value - measured;
  if (!lessThan(0, by)) return undefined;
  const parts = model.parts.filter(({ id }) => row.pieces.includes(id));
  const meets = [...new Set(parts.flatMap(part => namesAtEnds(part, model)))];
  const isFree = parts.length > 0 && meets.length === 0;
  const isGood = atMost(by, isFree ? SHOWS : GAP);
  return { by, isGood, meets, isFree, isNotched: row.notches.length > 0 };
}

/** Is it within what cutting at a stop gives anyway? */
export function isAsCut({ by }: ShortPiece): boolean {
  return atMost(by, AS_CUT);
}

function namesAtEnds(part: Part, { contacts, parts }: Model): readonly string[] {
  return contacts.flatMap(contact => {
    if (contact.a !== part.id && contact.b !== part.id) return [];
    if (!isAtEnd(contact, part)) return [];
    const other = contact.a === part.id ? contact.b : contact.a;
    const name = parts.find(({ id }) => id === other)?.name.toLowerCase();
    return name === undefined ? [] : [name];
  });
}

function isAtEnd({ normal, patch }: Contact, { runs, box }: Part): boolean {
  const plane = patch.min[runs];
  return (
    normal.axis === runs && (sameLength(plane, box.min[runs]) || sameLength(plane, box.max[runs]))
  );
}
