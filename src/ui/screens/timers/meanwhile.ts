import type { Minutes } from '../../../measure/quantities.js';
import type { Step } from '../../../plan/plan.js';
import { isLoud } from '../../../plan/work-pieces.js';
import { clockMinutes } from '../../../workbook/clock-words.js';
import { tallyOf } from '../../../workbook/next-step.js';
import type { Build } from '../../screen.js';

/** The work that is free while something stands, by how it goes with the time there is. */
export type FreeWork = {
  /** Done before the first wait is over. */
  readonly fits: readonly Step[];
  /** Counted piece by piece: some of it is. */
  readonly partly: readonly Step[];
  /** Takes longer than the wait. */
  readonly longer: readonly Step[];
  /** Would be loud after the last hour of noise. */
  readonly loud: readonly Step[];
};

/** Nobody saws before this hour, in minutes since midnight. */
const MORNING: Minutes = 6 * 60;

/** What is free now, beside what stands in clamps or wet, sorted by whether it fits into so many minutes. */
export function freeWork(
  build: Build,
  waiting: readonly string[],
  { leftMinutes, nowMs }: { readonly leftMinutes: Minutes; readonly nowMs: number },
): FreeWork {
  const { noiseUntil } = build.plan.time;
  const clock = clockMinutes(nowMs);
  const quiet = clock >= noiseUntil || clock < MORNING;
  const free = meanwhile(build, waiting);
  const loud = quiet ? free.filter(isLoud) : [];
  const fits: Step[] = [];
  const partly: Step[] = [];
  const longer: Step[] = [];
  for (const step of free.filter(it => !loud.includes(it))) {
    const first = step.needs.filter(need => !build.progress.done.has(need));
    const before = fits.filter(({ id }) => first.includes(id));
    // What it needs has to be done in the same wait.
    if (before.length < first.length) continue;
    const minutes = [...before, step].reduce((sum, it) => sum + leftToDo(it, build), 0);
    if (minutes <= leftMinutes) fits.push(step);
    else if (before.length > 0) continue;
    else if (step.tally !== undefined && step.tally.count > 1) partly.push(step);
    else longer.push(step);
  }
  return { fits, partly, longer, loud };
}

/** Minutes that a step still takes, less what is counted already. */
export function leftToDo(step: Step, { progress }: Build): Minutes {
  const tally = tallyOf(step, progress);
  const share = tally === undefined ? 1 : 1 - tally.done / Math.max(1, tally.count);
  return Math.round(step.minutes.value * share);
}

/** Work on boards that stand together, and get wet with a coat. */
const TOGETHER: readonly Step['phase'][] = ['dry-fit', 'assemble', 'place'];

/**
 * Steps that can be done while parts are clamped or wet: all that they need is done, or stands in this list before
 * them; no wait of theirs runs; and they do not work on what a waiting step has under its coat, or in clamps that
 * alone hold it. What waits for such a step waits with it.
 */
export function meanwhile({ plan, progress }: Build, waiting: readonly string[]): readonly Step[] {
  const waits = plan.steps.filter(({ id }) => waiting.includes(id));
  const timers = new Set(waits.flatMap(step => step.timers.map(({ id }) => id)));
  const wet = waits.some(({ phase }) => phase === 'finish');
  // Parts that screws hold may be worked on in their clamps; what has to wait for these says so itself.
  const fixed = plan.glueUps.filter(row => row.fixed).map(row => row.step);
  const held = new Set(waiting.filter(id => !fixed.includes(id)));
  const free: Step[] = [];
  for (const step of plan.steps) {
    const { id, needs, after, bright, phase } = step;
    if (bright.length > 0 && needs.some(need => held.has(need))) held.add(id);
    if (progress.done.has(id) || held.has(id) || waiting.includes(id)) continue;
    const waitsItself = after.some(timer => timers.has(timer));
    const isWet = wet && TOGETHER.includes(phase);
    const ready = needs.every(need => progress.done.has(need) || free.some(it => it.id === need));
    if (ready && !waitsItself && !isWet) free.push(step);
  }
  return free;
}
