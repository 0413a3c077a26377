import type { Minutes } from '../../../measure/quantities.js';
import type { Plan, Step } from '../../../plan/plan.js';
import { stepLasts } from '../../../plan/time-plan.js';
import { isLoud } from '../../../plan/work-pieces.js';
import { clockMinutes } from '../../../workbook/clock-words.js';
import { isDone, tallyOf } from '../../../workbook/next-step.js';
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
  const { people, noiseUntil } = build.plan.time;
  const clock = clockMinutes(nowMs);
  const quiet = clock >= noiseUntil || clock < MORNING;
  const free = meanwhile(build, waiting);
  const loud = quiet ? free.filter(isLoud) : [];
  const allowed = free.filter(step => !loud.includes(step));
  const fits = allowed.filter(step => leftToDo(step, build, people) <= leftMinutes);
  const rest = allowed.filter(step => !fits.includes(step));
  const partly = rest.filter(step => step.tally !== undefined && step.tally.count > 1);
  return { fits, partly, longer: rest.filter(step => !partly.includes(step)), loud };
}

/** Minutes that a step still takes, less what is counted already. */
export function leftToDo(step: Step, { progress }: Build, people: number): Minutes {
  const tally = tallyOf(step, progress);
  const share = tally === undefined ? 1 : 1 - tally.done / Math.max(1, tally.count);
  return Math.round(stepLasts(step, people) * share);
}

/** Work on loose boards, or before there are any; sealing and setting up need the whole piece. */
const POSSIBLE: readonly Step['phase'][] = ['plan', 'buy', 'cut', 'notch', 'dry-fit', 'assemble'];

/**
 * Steps that can be done while parts are clamped or wet: those whose own parts are none of them and
 * touch none of them. What waits for such a step waits with it: slats on a rail whose ends are still
 * in clamps stay out of the list. In the finished piece much touches that is put together apart, so
 * this leaves out too much rather than too little.
 *
 * A step whose own needs are neither done nor in this list before it stays out too.
 */
export function meanwhile(build: Build, waiting: readonly string[]): readonly Step[] {
  const { plan, progress } = build;
  const wet = new Set(plan.steps.filter(({ id }) => waiting.includes(id)).flatMap(partsOf));
  const beside = neighbors(plan);
  const held = new Set(wet);
  const free: Step[] = [];
  for (const step of plan.steps) {
    if (isDone(step, progress) || waiting.includes(step.id)) continue;
    const touched = isFixing(step) ? step.bright.flatMap(id => beside.get(id) ?? []) : [];
    const taken = isFixing(step) ? held : wet;
    const can = isPossible(step) && ![...step.bright, ...touched].some(id => taken.has(id));
    const ready = step.needs.every(id => progress.done.has(id) || free.some(it => it.id === id));
    if (can && ready) free.push(step);
    else for (const id of partsOf(step)) held.add(id);
  }
  return free;
}

/** Cutting and notching are done on loose boards; fixing touches what the board will touch. */
function isFixing({ phase }: Step): boolean {
  return phase === 'assemble' || phase === 'dry-fit';
}

function isPossible(step: Step): boolean {
  return POSSIBLE.includes(step.phase) && (!isFixing(step) || step.bright.length > 0);
}

/** A coat wets everything that stands there; a glue-up holds what it sets. */
function partsOf(step: Step): readonly string[] {
  return step.phase === 'finish' ? [...step.bright, ...step.standing] : step.bright;
}

function neighbors({ model }: Plan): ReadonlyMap<string, readonly string[]> {
  const beside = new Map<string, string[]>();
  const add = (one: string, other: string) => {
    const known = beside.get(one);
    if (known === undefined) beside.set(one, [other]);
    else known.push(other);
  };
  for (const { a, b } of model.contacts) {
    add(a, b);
    add(b, a);
  }
  return beside;
}
