import type { GlueUpKind, GlueUpRow } from '../../../plan/glue-rows.js';
import { isOpenTime } from '../../../plan/open-time.js';
import type { Step, StepTimer } from '../../../plan/plan.js';
import { isDone, tallyOf } from '../../../workbook/next-step.js';
import { standingEvents } from '../../../workbook/taken-back.js';
import type { Build } from '../../screen.js';

/** The glue-up at hand: which of how many, what it holds, and how much of it is still to be counted. */
export type GlueUpNow = {
  readonly row: GlueUpRow;
  readonly kind: GlueUpKind;
  readonly number: number;
  readonly of: number;
  readonly open: number;
  /** Nothing of it is counted yet. */
  readonly isFresh: boolean;
};

/** The glue-up that a step is at; none once all is counted, and where it glues nothing. */
export function glueUpNow(step: Step, { plan, progress }: Build): GlueUpNow | undefined {
  const row = plan.glueUps.find(it => it.step === step.id);
  const tally = tallyOf(step, progress) ?? { done: isDone(step, progress) ? 1 : 0, count: 1 };
  if (row === undefined || tally.done >= tally.count) return undefined;
  const sizes = row.sizes.length > 0 ? row.sizes : [tally.count];
  let closed = 0;
  for (const [at, size] of sizes.entries()) {
    const kind = row.kinds[row.order[at] ?? 0];
    const open = closed + size - tally.done;
    if (open > 0 && kind !== undefined)
      return { row, kind, number: at + 1, of: sizes.length, open, isFresh: open === size };
    closed += size;
  }
  return undefined;
}

/**
 * Joints that are still to be counted before the glue-up at hand is closed and its clamps can be timed; 0 between two
 * glue-ups, and where a step counts nothing. Eight panels of four joints with six counted: two.
 */
export function openInGlueUp(step: Step, build: Build): number {
  const tally = tallyOf(step, build.progress);
  if (tally === undefined || tally.done >= tally.count) return 0;
  const now = glueUpNow(step, build);
  if (now === undefined) return tally.count - tally.done;
  return now.isFresh && tally.done > 0 ? 0 : now.open;
}

/** The open time of the glue-up at hand, by its number where there are several; none once all is closed. */
export function openTimeAt(step: Step, build: Build): StepTimer | undefined {
  const now = glueUpNow(step, build);
  if (now === undefined) return undefined;
  const { open } = now.row;
  return now.of === 1
    ? open
    : { ...open, name: `${open.name}, glue-up ${now.number} of ${now.of}` };
}

/** The same where it is to be started now: before the first stroke of the brush, and not twice. */
export function openTimeDue(step: Step, build: Build): StepTimer | undefined {
  const timer = openTimeAt(step, build);
  if (timer === undefined || glueUpNow(step, build)?.isFresh !== true) return undefined;
  const last = standingEvents(build.workbook.events).findLast(
    event => event.kind === 'timer-started' && event.timer === timer.id,
  );
  return last?.kind === 'timer-started' && last.name === timer.name ? undefined : timer;
}

/** The timers that can be started at a step as it is now, in the order in which they are wanted. */
export function timersAt(step: Step, build: Build): readonly StepTimer[] {
  const open = openTimeAt(step, build);
  return open === undefined ? step.timers : [open, ...step.timers];
}

/** Would it be started too early? Clamps are timed once the glue-up at hand is closed. */
export function isTooEarly(timer: StepTimer, step: Step, build: Build): boolean {
  return !isOpenTime(timer) && openInGlueUp(step, build) > 0;
}
