import type { Step, StopSetting } from '../../plan/plan.js';
import type { Bench } from '../../plan/rack-now.js';
import { settingOf } from '../../plan/setting.js';
import { isCheckMade, isDone, tallyOf } from '../../workbook/next-step.js';
import type { Pack } from './pack.js';

/** What the rules of the rack need to know of the build that is printed; none where a plan alone is. */
export function benchOf({ plan, build }: Pack): Bench | undefined {
  if (build === undefined) return undefined;
  const setting = settingOf(build.workbook.answers, plan.display);
  return { plan, setting, work: build.progress };
}

/** Is this step done in the build that is printed? Never where a plan alone is printed. */
export function stepIsDone(step: Step, { build }: Pack): boolean {
  return build !== undefined && isDone(step, build.progress);
}

/** Is this check of a step made? */
export function checkIsMade(step: Step, number: number, { build }: Pack): boolean {
  if (build === undefined) return false;
  return isDone(step, build.progress) || isCheckMade(step, number, build.progress);
}

/** How many pieces of a setting of the stop are cut. */
export function piecesCut(setting: StopSetting, { plan, build }: Pack): number {
  if (build === undefined) return 0;
  const marks = new Set(setting.marks.map(({ mark }) => mark));
  const rows = plan.cutList.filter(({ mark }) => marks.has(mark));
  const pieces = new Set(rows.flatMap(row => row.pieces));
  const cutting = plan.steps.filter(
    step =>
      step.phase === 'cut' && step.tally !== undefined && step.bright.some(id => pieces.has(id)),
  );
  return cutting.reduce((sum, step) => sum + (tallyOf(step, build.progress)?.done ?? 0), 0);
}
