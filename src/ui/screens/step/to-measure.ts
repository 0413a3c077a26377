import { isOfRule, type MeasureRow } from '../../../plan/measures.js';
import type { Plan, Step } from '../../../plan/plan.js';
import type { SquareRow } from '../../../plan/squares.js';
import { type CutStep, cutStepsOf } from '../../../plan/work-so-far.js';

/** What the tape is wanted for at a step. */
export type ToMeasure = {
  /** The pieces that it cuts, of which the first is measured. */
  readonly cutting: CutStep | undefined;
  readonly sizes: readonly MeasureRow[];
  readonly frames: readonly SquareRow[];
};

/** The first piece, sizes that later pieces follow, diagonals of what is closed here. */
export function toMeasure(step: Step | undefined, plan: Plan): ToMeasure {
  if (step === undefined) return { cutting: undefined, sizes: [], frames: [] };
  return {
    cutting: cutStepsOf(plan).find(cutting => cutting.step.id === step.id),
    sizes: plan.measures.filter(({ steps }) => steps.some(rule => isOfRule(step.id, rule))),
    frames: plan.squares.filter(row => isOfRule(step.id, row.step)),
  };
}

/** Is there anything that belongs to this very step? */
export function isMeasured({ cutting, sizes, frames }: ToMeasure): boolean {
  return cutting !== undefined || sizes.length + frames.length > 0;
}
