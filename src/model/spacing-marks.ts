import type { Mm } from '../measure/quantities.js';
import { snap } from '../measure/round.js';

/**
 * Center of each piece from the datum, for one line that is squared across: sixteen 1-1/2 in boards
 * flush over 119 in have their first center at 3/4 in.
 */
export function centersOf(marks: readonly Mm[], piece: Mm): readonly Mm[] {
  return marks.map(mark => mark + piece / 2);
}

/** A mark in the middle of the run, to be read from both ends before anything is cut or drilled. */
export type CheckMark = {
  /** Which piece, from 1. */
  readonly piece: number;
  /** Its near edge from the datum. */
  readonly fromDatum: Mm;
  /** The same edge from the far end: the two have to add up to the run. */
  readonly fromFarEnd: Mm;
};

/**
 * The middle piece of a run, of two in the middle the second: the 7th of twelve pickets over 96 in has
 * its near edge at 49.364 in and 46.636 in from the far end. Undefined without pieces.
 */
export function checkMark(marks: readonly Mm[], over: Mm): CheckMark | undefined {
  const at = Math.floor(marks.length / 2);
  const fromDatum = marks[at];
  if (fromDatum === undefined) return undefined;
  return { piece: at + 1, fromDatum, fromFarEnd: over - fromDatum };
}

/**
 * The most that any mark is off when each is rounded alone to the grid: never more than half a step,
 * however many there are.
 */
export function worstRounding(marks: readonly Mm[], grid: Mm): Mm {
  return Math.max(0, ...marks.map(mark => Math.abs(snap(mark, grid) - mark)));
}
