import { OPEN_SHARE } from '../materials/drainage.js';
import { figure } from '../measure/figure-text.js';
import type { Mm } from '../measure/quantities.js';
import type { Part } from '../model/part.js';
import type { Room } from './planter-inside.js';

/** How much of a floor of loose planks is open, and whether that is as much as drilled holes give. */
export function drainFigures(planks: readonly Part[], { x, y }: Room) {
  const floor = (x[1] - x[0]) * (y[1] - y[0]);
  const covered = planks.reduce(
    (sum, { box }) => sum + within(box.min.x, box.max.x, x) * within(box.min.y, box.max.y, y),
    0,
  );
  const share = Math.max(0, 1 - covered / floor);
  const { least, most } = OPEN_SHARE.value;
  return {
    open: figure(
      share * 100,
      'percent',
      `floor less its planks; holes usually open ${least * 100} to ${most * 100} % of it`,
      OPEN_SHARE.source,
    ),
    drains: share >= least,
  };
}

function within(from: Mm, to: Mm, [least, most]: readonly [Mm, Mm]): Mm {
  return Math.max(0, Math.min(to, most) - Math.max(from, least));
}
