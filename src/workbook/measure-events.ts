import type { Mm } from '../measure/quantities.js';
import type { CutPieces } from '../plan/as-cut.js';

/** What the tape showed at a step. */
export type MeasureEvent =
  /** Several readings of one length, and the one that counts from here on if it was taken over. */
  | {
      readonly kind: 'size-measured';
      readonly atMs: number;
      readonly step: string;
      /** `2x4.width`, `seat`: as the plan lists it. */
      readonly what: string;
      readonly readings: readonly Mm[];
      readonly value: Mm;
      /** False where the plan was left as it was. */
      readonly isTaken: boolean;
      /** Cut by then, and staying as it is; empty where the plan was left. */
      readonly cut: readonly CutPieces[];
    }
  /** A measured length that counts no more: the planned one does again, for what is not cut. */
  | {
      readonly kind: 'measure-dropped';
      readonly atMs: number;
      readonly step: string;
      readonly what: string;
      readonly cut: readonly CutPieces[];
    }
  /** The first piece at a stop. Where it is right, the stop is. */
  | {
      readonly kind: 'first-measured';
      readonly atMs: number;
      readonly step: string;
      readonly planned: Mm;
      readonly measured: Mm;
      readonly isRight: boolean;
      /** The step has a check on its first piece, and it is made by this. */
      readonly ticks: boolean;
    }
  /** Corner to corner, both ways. */
  | {
      readonly kind: 'diagonals-measured';
      readonly atMs: number;
      readonly step: string;
      /** Of the rectangle that was measured: 1 for the first of its kind. */
      readonly number: number;
      readonly long: Mm;
      readonly wide: Mm;
      readonly one: Mm;
      readonly other: Mm;
    };

/** What the bench knows besides the counts: the fold of the measure events. */
export type Found = {
  /** Lengths that count instead of the planned ones. */
  readonly measured: ReadonlyMap<string, Mm>;
  /** Pieces that were cut when a length was last taken over. */
  readonly cutBefore: readonly CutPieces[];
  /** Everything that was measured and stands, in order. */
  readonly readings: readonly MeasureEvent[];
};

export const NOTHING_FOUND: Found = { measured: new Map(), cutBefore: [], readings: [] };

/** What is known after one more event. */
export function findMore(found: Found, event: MeasureEvent): Found {
  const readings = [...found.readings, event];
  if (event.kind === 'size-measured' && event.isTaken) {
    const measured = new Map(found.measured).set(event.what, event.value);
    return { measured, cutBefore: event.cut, readings };
  }
  if (event.kind === 'measure-dropped') {
    const measured = new Map(found.measured);
    measured.delete(event.what);
    return { measured, cutBefore: event.cut, readings };
  }
  return { ...found, readings };
}

/** A piece that was cut before is lost: its new one is cut by what is known now. */
export function oneLess(found: Found, mark: string): Found {
  const at = found.cutBefore.findIndex(it => it.mark === mark && it.pieces.length > 0);
  const it = found.cutBefore[at];
  if (it === undefined) return found;
  const less = { ...it, pieces: it.pieces.slice(0, -1) };
  return { ...found, cutBefore: found.cutBefore.with(at, less) };
}
