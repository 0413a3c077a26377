import type { Mm } from '../measure/quantities.js';
import { distinct } from './distinct.js';
import type { PaperBox } from './sight.js';

/** The near side of one box of a part. */
export type Face = PaperBox & { readonly part: number; readonly depth: Mm };

/** Number of a part that is nowhere: bare paper. */
export const PAPER = -1;

/**
 * What the eye meets. Every face is bounded by grid lines, so within one cell of the grid the nearest
 * part and its depth are the same all over: the grid is exact and not a sample.
 */
export type Seen = {
  /** Grid lines in mm; cell (i, j) lies between us[i] and us[i + 1], vs[j] and vs[j + 1]. */
  readonly us: readonly Mm[];
  readonly vs: readonly Mm[];
  /** Numbers of the parts of which something can be seen, and PAPER. */
  readonly parts: ReadonlySet<number>;
  /** Number of the nearest part, or PAPER. */
  readonly partAt: (i: number, j: number) => number;
  /** Rank of its depth, 0 the nearest of the whole piece; bare paper is farthest. */
  readonly depthAt: (i: number, j: number) => number;
};

/**
 * Finds what is nearest at every place of the paper. Of two parts at the same depth, which can only
 * be when boards overlap, the first in the list is seen.
 */
export function whatIsSeen(faces: readonly Face[]): Seen {
  const us = distinct(faces.flatMap(face => [face.u.from, face.u.to]));
  const vs = distinct(faces.flatMap(face => [face.v.from, face.v.to]));
  const depths = distinct(faces.map(face => face.depth));
  const across = us.values.length - 1;
  const up = vs.values.length - 1;
  const cells = Math.max(0, across * up);
  const parts = new Int32Array(cells).fill(PAPER);
  const ranks = new Int32Array(cells).fill(depths.values.length);
  for (const face of faces) {
    const rank = numberOf(depths.indexOf, face.depth);
    const toI = numberOf(us.indexOf, face.u.to);
    const toJ = numberOf(vs.indexOf, face.v.to);
    for (let j = numberOf(vs.indexOf, face.v.from); j < toJ; j += 1) {
      for (let i = numberOf(us.indexOf, face.u.from); i < toI; i += 1) {
        const cell = j * across + i;
        if (rank >= (ranks[cell] ?? rank)) continue;
        ranks[cell] = rank;
        parts[cell] = face.part;
      }
    }
  }
  const at = (from: Int32Array, bare: number) => (i: number, j: number) =>
    i < 0 || j < 0 || i >= across || j >= up ? bare : (from[j * across + i] ?? bare);
  return {
    us: us.values,
    vs: vs.values,
    parts: new Set(parts),
    partAt: at(parts, PAPER),
    depthAt: at(ranks, depths.values.length),
  };
}

function numberOf(indexOf: ReadonlyMap<Mm, number>, position: Mm): number {
  const found = indexOf.get(position);
  if (found === undefined) throw new Error(`no grid line at ${position}`);
  return found;
}
