import type { Minutes } from '../measure/quantities.js';
import { MINUTE_MS } from '../measure/spans.js';
import type { Session, Step } from '../plan/plan.js';
import { stepsBeside } from '../plan/side-by-side.js';
import type { Phase } from '../recipe/recipe.js';
import type { Event } from './events.js';
import type { Progress } from './workbook.js';
import { workedUntil } from './worked-time.js';

/** Weight of the plan against what really happened, as if so much had been done just as planned. A judgment of ours. */
const TRUST_IN_PLAN: Minutes = 60;
/** Nobody is that much faster or slower for long; beyond it the journal was not kept. */
const LEAST = 0.5;
const MOST = 3;

const NOTHING_BESIDE: ReadonlySet<string> = new Set();

/** How long work really takes, over how long it was planned. */
export type Pace = {
  /** Of all work that is done. */
  readonly all: number;
  readonly of: (phase: Phase) => number;
  /** Minutes of planned work that it is learned from. */
  readonly learnedFrom: Minutes;
};

/**
 * Minutes at the bench for each step: the time up to each of its entries, pauses and waits for clamps left out. What
 * the helper does beside the lead gets none: the same minutes are those of the lead's step.
 */
export function minutesByStep(
  events: readonly Event[],
  steps: readonly Step[],
  beside: ReadonlySet<string> = NOTHING_BESIDE,
): ReadonlyMap<string, Minutes> {
  const spent = new Map<string, Minutes>();
  const ends = new Map<string, number>();
  let paused: Progress['paused'];
  let lastAtMs: number | undefined;
  for (const event of events) {
    if ('step' in event && beside.has(event.step) && event.kind !== 'paused') continue;
    if ('step' in event && lastAtMs !== undefined) {
      const step = steps.find(({ id }) => id === event.step);
      const free = Math.max(
        lastAtMs,
        ...(step?.after ?? []).map(id => upBefore(ends.get(id), event.atMs)),
      );
      const ms = workedUntil(event, { workedMs: 0, lastAtMs: free, paused });
      spent.set(event.step, (spent.get(event.step) ?? 0) + ms / MINUTE_MS);
    }
    if (event.kind === 'timer-started')
      ends.set(event.timer, event.atMs + event.lastsMinutes * MINUTE_MS);
    if (event.kind === 'paused') paused = event;
    if (event.kind === 'resumed') paused = undefined;
    lastAtMs = event.atMs;
  }
  return spent;
}

/** A wait that ended since is not work. */
function upBefore(endMs: number | undefined, atMs: number): number {
  return endMs !== undefined && endMs <= atMs ? endMs : 0;
}

/**
 * How this builder's time compares with the plan, kind of work by kind of work, learned from the steps that are
 * done. An hour of the plan is trusted beside it, so that one slow step upsets little; a kind not yet done goes at
 * the pace of all the others. Cutting planned at 60 min that took 120: (120 + 60) / (60 + 60) = 1.5.
 */
export function paceOf(
  events: readonly Event[],
  steps: readonly Step[],
  done: ReadonlySet<string>,
  sessions: readonly Pick<Session, 'turns'>[] = [],
): Pace {
  const spent = minutesByStep(events, steps, stepsBeside(sessions));
  const finished = steps.filter(({ id }) => done.has(id) && (spent.get(id) ?? 0) > 0);
  const planned = (of: readonly Step[]) => of.reduce((sum, { minutes }) => sum + minutes.value, 0);
  const taken = (of: readonly Step[]) => of.reduce((sum, { id }) => sum + (spent.get(id) ?? 0), 0);
  const all = ratio(taken(finished), planned(finished), 1);
  return {
    all,
    learnedFrom: planned(finished),
    of: phase => {
      const own = finished.filter(step => step.phase === phase);
      const others = finished.filter(step => step.phase !== phase);
      return ratio(taken(own), planned(own), ratio(taken(others), planned(others), 1));
    },
  };
}

function ratio(taken: Minutes, planned: Minutes, otherwise: number): number {
  const learned = (taken + TRUST_IN_PLAN * otherwise) / (planned + TRUST_IN_PLAN);
  return Math.min(MOST, Math.max(LEAST, learned));
}
