import { type Frame, pictureOf } from '../../pictures.js';
import type { Build, Context } from '../../screen.js';
import { HEAD_ROWS, type PlanState } from './state.js';
import { planSubject } from './subject.js';

/** The drawing below the tabs. */
export function drawing({ sight }: PlanState, { plan }: Build, { size, ascii }: Context) {
  const frame: Frame = {
    columns: size.columns,
    rows: Math.max(1, size.rows - HEAD_ROWS),
    ascii,
  };
  return pictureOf(planSubject(plan), sight, frame);
}
