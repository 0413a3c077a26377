import { inches } from '../measure/inch.js';
import type { Mm } from '../measure/quantities.js';
import { lessThan } from '../measure/tolerance.js';

/** No hand comes nearer to the blade than this: manuals of miter saws, the larger of their figures. */
export const NO_HANDS: Mm = inches(6 + 3 / 8);

/** What a hand and its room to the blade need beside the cut; a judgment of ours from NO_HANDS. */
export const TO_HOLD: Mm = inches(12);

/** Too short to be held at a power saw: it has to be clamped. */
export function isShortToHold(length: Mm): boolean {
  return lessThan(length, TO_HOLD);
}

/** When the pieces of a mark come to the saw. */
export type Turns = ReadonlyMap<string, number>;

export function turnsOf(rows: readonly { readonly mark: string; readonly turn: number }[]): Turns {
  return new Map(rows.map(({ mark, turn }) => [mark, turn]));
}

/**
 * Pieces of a board, or of all, in the order in which the stops come: so they are sawn, and so they lie along the
 * board from its squared end.
 */
export function inCuttingOrder<C extends { readonly mark: string }>(
  cuts: readonly C[],
  turns: Turns,
): readonly C[] {
  const turn = ({ mark }: C) => turns.get(mark) ?? 0;
  return cuts.toSorted((a, b) => turn(a) - turn(b));
}

function compareLengths(a: Mm, b: Mm): number {
  return Number(isShortToHold(b)) - Number(isShortToHold(a)) || b - a;
}

type OfSection = { readonly section: string; readonly length: { readonly value: Mm } };

/**
 * Settings of the stop in the order of sawing, section by section as they come: those too short to be held first,
 * while there is a long board to hold; then the others, so that the last bit of a board is one of them. In both,
 * longest first. Of 48 in, 15 in and 3-1/2 in the 3-1/2 in come first and the 15 in last.
 */
export function inSawOrder<T>(settings: readonly T[], of: (setting: T) => OfSection): readonly T[] {
  const sections = [...new Set(settings.map(setting => of(setting).section))];
  return settings.toSorted((one, other) => {
    const [a, b] = [of(one), of(other)];
    const apart = sections.indexOf(a.section) - sections.indexOf(b.section);
    return apart || compareLengths(a.length.value, b.length.value);
  });
}

/** Pieces of a board in the order of sawing, and what is left behind the last of them. */
export type Row = { readonly cuts: readonly { readonly length: Mm }[]; readonly left: Mm };

/** Which pieces, by their places in the row, are parted where neither they nor the rest are long enough to be held. */
export function heldByClamps({ cuts, left }: Row, kerf: Mm): readonly number[] {
  const places: number[] = [];
  let rest = left;
  for (let at = cuts.length - 1; at >= 0; at--) {
    const length = cuts[at]?.length ?? 0;
    // Flush with the end, the last piece is not parted from anything.
    const isParted = lessThan(0, rest);
    if (isParted && isShortToHold(length) && isShortToHold(rest)) places.unshift(at);
    rest += length + (isParted ? kerf : 0);
  }
  return places;
}
