import type { Step } from '../../../plan/plan.js';
import { tallyOf } from '../../../workbook/next-step.js';
import type { Build } from '../../screen.js';

/**
 * Joints that are still to be counted before the glue-up at hand is closed and its clamps can be timed; 0 between two
 * glue-ups, and where a step counts nothing. Eight panels of four joints with six counted: two.
 */
export function openInGlueUp(step: Step, { plan, progress }: Build): number {
  const tally = tallyOf(step, progress);
  if (tally === undefined || tally.done >= tally.count) return 0;
  const kinds = plan.glueUps.find(row => row.step === step.id)?.kinds ?? [];
  const sizes = kinds.flatMap(({ count, joints }) => Array.from({ length: count }, () => joints));
  const all = sizes.reduce((sum, joints) => sum + joints, 0);
  if (all !== tally.count) return tally.count - tally.done;
  let closed = 0;
  for (const joints of sizes) {
    if (closed === tally.done && closed > 0) return 0;
    closed += joints;
    if (closed > tally.done) return closed - tally.done;
  }
  return 0;
}
