import type { Display, Mm } from '../measure/quantities.js';
import { type HeldBoard, holdLines } from './hold-lines.js';
import { knotLines, type Roomy } from './knot-room.js';
import type { StepSetting } from './plan.js';

/** What may be cut out for knots on the boards of a stop, and what has to be clamped there for these marks. */
export function boardLines(
  boards: readonly (Roomy & HeldBoard)[],
  marks: ReadonlySet<string>,
  saw: { readonly kerf: Mm; readonly display: Display },
): readonly StepSetting[] {
  return [...knotLines(boards, saw.display), ...holdLines(boards, marks, saw)];
}
