import { flow } from '../sheet/flow.js';
import type { Sheet } from '../sheet/mark.js';
import { titlePieces } from '../sheet/set-words.js';
import type { Pack } from './pack.js';
import { stepPieces } from './step-pieces.js';

/** Every step in order, one on a sheet or as many as have room; none is parted that fits on one. */
export function stepSheets(pack: Pack): readonly Sheet[] {
  const title = 'Step by step';
  const pieces = pack.plan.steps.flatMap((step, at) => stepPieces(step, at + 1, pack));
  return flow([...titlePieces(title, pack.measure), ...pieces], pack.frame.height, title);
}
