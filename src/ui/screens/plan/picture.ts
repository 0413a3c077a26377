import { type Frame, pictureOf } from '../../pictures.js';
import type { Build, Context } from '../../screen.js';
import { headHeight, type PlanState } from './state.js';
import { planSubject } from './subject.js';

/** The drawing below the tabs. */
export function drawing(state: PlanState, build: Build, at: Context) {
  const { size, ascii } = at;
  const frame: Frame = {
    columns: size.columns,
    rows: Math.max(1, size.rows - headHeight(state, build, at)),
    ascii,
  };
  return pictureOf(planSubject(build.plan), state.sight, frame);
}
