import type { Mm } from '../../measure/quantities.js';
import type { BoardBox } from '../../model/frame-of-board.js';
import { edgeStrokes } from '../edges.js';
import { brightPatches } from '../patches.js';
import { type Face, whatIsSeen } from '../seen.js';
import { cornersOf, type PaperBox } from '../sight.js';
import type { Patch, Stroke } from '../strokes.js';
import type { LyingPiece } from './lying.js';

/** A side of a piece on the paper: where a box of it lies, and how far from the eye. */
export type Side = (box: BoardBox) => { readonly on: PaperBox; readonly depth: Mm };

/** What is drawn of one side. */
export type DrawnSide = { readonly strokes: readonly Stroke[]; readonly patches: readonly Patch[] };

/**
 * A piece from one side, its waste still in place and hatched. Waste that lies wholly behind wood is
 * dashed.
 */
export function drawSide({ wood, waste }: LyingPiece, side: Side, mark: string): DrawnSide {
  const face = (box: BoardBox, part: number): Face => {
    const { on, depth } = side(box);
    return { ...on, part, depth };
  };
  const seen = whatIsSeen([
    ...waste.map((box, at) => face(box, at + 1)),
    ...wood.map(box => face(box, 0)),
  ]);
  const isWaste = new Set(waste.map((_, at) => at + 1));
  const hidden = waste.filter((_, at) => !seen.parts.has(at + 1));
  return {
    strokes: [
      ...edgeStrokes(seen, new Set()),
      ...hidden.flatMap(box => outline(side(box).on, 'hidden')),
    ],
    patches: brightPatches(seen, isWaste, () => mark).map(patch => ({ ...patch, look: 'waste' })),
  };
}

/** The four sides of a rectangle. */
export function outline(box: PaperBox, kind: Stroke['kind'], bright = false): readonly Stroke[] {
  const corners = cornersOf(box);
  return corners.map((from, at) => ({
    from,
    to: corners[(at + 1) % corners.length] ?? from,
    kind,
    bright,
  }));
}
