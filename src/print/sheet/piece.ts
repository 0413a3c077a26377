import type { Mm } from '../../measure/quantities.js';
import { type Mark, moved } from './mark.js';

/** Something that stays in one: a line of words, a row of a table, a picture. Its corner is at 0, 0. */
export type Piece = {
  readonly height: Mm;
  /** White above it, unless it begins a page. */
  readonly above: Mm;
  readonly marks: readonly Mark[];
  /** A heading never stands alone at the foot of a page. */
  readonly staysWithNext: boolean;
  /** Stands before it again where it begins a page: the titles of a table. */
  readonly head?: Piece;
};

export function piece(height: Mm, marks: readonly Mark[], more: Partial<Piece> = {}): Piece {
  return { height, above: 0, staysWithNext: false, ...more, marks };
}

/** Several pieces as one that is not parted. */
export function bound(pieces: readonly Piece[], more: Partial<Piece> = {}): Piece {
  const marks: Mark[] = [];
  let height = 0;
  for (const [at, one] of pieces.entries()) {
    if (at > 0) height += one.above;
    marks.push(...moved(one.marks, { x: 0, y: height }));
    height += one.height;
  }
  return piece(height, marks, { above: pieces[0]?.above ?? 0, ...more });
}

/** Two pieces side by side as one. */
export function beside(left: Piece, right: Piece, at: Mm): Piece {
  return piece(
    Math.max(left.height, right.height),
    [...left.marks, ...moved(right.marks, { x: at, y: 0 })],
    { above: Math.max(left.above, right.above) },
  );
}

/** The same with more white above. */
export function lower(one: Piece, above: Mm): Piece {
  return { ...one, above };
}
