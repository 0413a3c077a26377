import { flow } from '../sheet/flow.js';
import type { Sheet } from '../sheet/mark.js';
import { bound, type Piece } from '../sheet/piece.js';
import { titlePieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';
import { stepPieces } from './step-pieces.js';

/** Every step in order; a step is not parted where it fits on a sheet. */
export function stepSheets(pack: Pack): readonly Sheet[] {
  const title = 'Step by step';
  const pieces = pack.plan.steps.flatMap((step, at) => {
    const own = stepPieces(step, at + 1, pack);
    return heightOf(own) <= pack.frame.height ? [bound(own)] : own;
  });
  return flow([...titlePieces(title, pack.measure), ...pieces], pack.frame.height, title);
}

function heightOf(pieces: readonly Piece[]): number {
  return pieces.reduce((sum, one) => sum + one.above + one.height, 0);
}
