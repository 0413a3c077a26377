import type { Context } from '../../screen.js';
import { nextMove } from './next-move.js';
import { type StepState, shownStep } from './state.js';

/**
 * What the big key does at the step. One piece more of the same step is the same thing again; a check, a page that
 * is read aloud, a timer and the end of the step are something else each time.
 */
export function underThumb(state: StepState, { build, nowMs }: Context): string | undefined {
  const { pane } = state;
  const step = build === undefined ? undefined : shownStep(state, build);
  if (build === undefined || step === undefined) return undefined;
  if (pane.kind !== 'work' && pane.kind !== 'timers') return undefined;
  const { kind } = nextMove(step, build, nowMs);
  if (pane.kind === 'work' && kind === 'count') return `${step.id} ${kind}`;
  const top = pane.kind === 'work' ? pane.top : undefined;
  return [step.id, pane.kind, kind, build.workbook.events.length, top].join(' ');
}
