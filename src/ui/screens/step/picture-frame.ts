import { bestSight, type Frame } from '../../pictures.js';
import type { Context } from '../../screen.js';
import type { Pane, StepBench } from './state.js';
import { subjectOf } from './subject.js';

/** Rows over a picture that fills the screen: its title and a blank. */
export const TITLE_ROWS = 2;

/** The room of a picture that fills the screen, less the lines that belong under it. */
export function pictureFrame({ size, ascii }: Context, under = 0): Frame {
  return {
    columns: size.columns,
    rows: Math.max(1, size.rows - TITLE_ROWS - under),
    ascii,
  };
}

/** The picture of a step over the whole screen, as most is seen. */
export function picturePane({ step, build, at }: StepBench): Pane {
  return { kind: 'picture', ...bestSight(subjectOf(step, build.plan), pictureFrame(at)) };
}
