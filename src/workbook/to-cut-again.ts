import type { Step } from '../plan/plan.js';
import { tallyOf } from './next-step.js';
import type { Progress, Spoiled } from './workbook.js';

/**
 * Pieces of a step that were spoiled and whose new ones are not counted yet, the newest at the end. Three of
 * eight are open and one was spoiled: that one, since it is cut last.
 */
export function toCutAgain(step: Step, progress: Progress): readonly Spoiled[] {
  const tally = tallyOf(step, progress);
  const open = tally === undefined ? 0 : tally.count - tally.done;
  if (open === 0) return [];
  return progress.rackChanges
    .filter(change => change.kind === 'spoiled')
    .filter(({ step: id }) => id === step.id)
    .slice(-open);
}
