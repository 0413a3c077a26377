import type { Step } from '../../../plan/plan.js';
import type { Build, Context } from '../../screen.js';
import { BLANK, type Row } from '../../widgets/rows.js';
import { checkRows } from './check-rows.js';
import { headRows } from './head-rows.js';
import { moveRow } from './move-words.js';
import { nextMove } from './next-move.js';
import { openBeforeRows } from './open-before-rows.js';
import { toldBlocks } from './said-blocks.js';
import { notTodayRows, timerRows } from './timer-rows.js';
import { topBlocks } from './top-blocks.js';

/** The step that is seen, and where. */
export type Work = { readonly step: Step; readonly build: Build; readonly at: Context };

export type Style = {
  readonly columns: number;
  readonly large: boolean;
  /** A blank row between what belongs together and what does not. */
  readonly roomy: boolean;
  /** Notes in one row. */
  readonly shortNotes: boolean;
};

/** A step as rows: the title stays, the body may scroll, the foot says what the big key does now. */
export type WorkRows = {
  readonly head: readonly Row[];
  readonly body: readonly Row[];
  readonly foot: readonly Row[];
  /** Row of the body that is to be seen: the check that comes next. */
  readonly focus: number;
};

export function workRows(work: Work, style: Style): WorkRows {
  const { step, build, at } = work;
  const move = nextMove(step, build, at.nowMs);
  const { columns } = style;
  const checks = checkRows(work, move, columns);
  const before = [
    notTodayRows(work, columns),
    openBeforeRows(work, columns),
    ...topBlocks(work, style),
    ...toldBlocks(work, style),
    timerRows(work, columns),
  ].filter(rows => rows.length > 0);
  const blocks = [...before, checks.rows].filter(rows => rows.length > 0);
  const gap = style.roomy ? [BLANK] : [];
  const body = blocks.flatMap((rows, number) => (number === 0 ? rows : [...gap, ...rows]));
  const above = before.reduce((sum, rows) => sum + rows.length + gap.length, 0);
  return {
    head: [...headRows(work, at.size.columns), ...gap],
    body,
    foot: [...gap, moveRow(move, work)],
    focus: checks.next === undefined ? 0 : Math.min(body.length - 1, above + checks.next),
  };
}
