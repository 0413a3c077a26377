import type { Celsius } from '../measure/quantities.js';
import { DAY_MS, MINUTE_MS } from '../measure/spans.js';
import type { Plan, Step } from '../plan/plan.js';
import type { Event } from './events.js';
import { timerStarted } from './timers.js';

/** Invented: the garage of the example, by the thermometer on its wall. */
const WARM: Celsius = 20;
/** What a running timer has left when the example is opened, so that one need not wait for it. */
const LEFT_MINUTES = 12;

/**
 * The journal of a build that stands half-way through its second evening at `nowMs`: yesterday's
 * session done and closed with a note, half of today's done, the next step begun. A timer of the last
 * step done has 12 minutes left. Nobody stops with a glue-up half closed.
 */
export function exampleEvents(plan: Plan, nowMs: number): readonly Event[] {
  const [first, second] = plan.time.sessions.map(({ steps }) => stepsOf(plan, steps));
  const before = plan.steps.filter(({ phase }) => phase === 'plan' || phase === 'buy');
  const yesterday = [...before, ...(first ?? [])].filter(step => second?.includes(step) !== true);
  const today = second ?? [];
  const half = today.slice(0, stopIn(today));
  const startedAtMs = nowMs - DAY_MS - lengthMs(yesterday);
  const resumedAtMs = nowMs - lengthMs(half) - 5 * MINUTE_MS;
  const events: readonly Event[] = [
    { kind: 'build-started', atMs: startedAtMs },
    ...briefedFor(
      [...yesterday, ...half, ...today.slice(half.length, half.length + 1)],
      startedAtMs,
    ),
    ...doneFrom(yesterday, startedAtMs),
    ...closing(yesterday, startedAtMs + lengthMs(yesterday)),
    { kind: 'resumed', atMs: resumedAtMs },
    {
      kind: 'day-told',
      atMs: resumedAtMs,
      work: 'glue',
      now: WARM,
      coldest: WARM,
      slept: WARM,
      moisturePercent: 13,
    },
    ...doneFrom(half, resumedAtMs),
    ...begun(today[half.length], nowMs - 2 * MINUTE_MS),
    ...timersOf(half.at(-1), nowMs),
  ];
  return [...events].sort((one, other) => one.atMs - other.atMs);
}

/**
 * How many of these steps are done when it is shown: about half. Best where clamps were just put on and the work that
 * goes on beside them can be left after any piece; never at a step that is glued and clamped in one go.
 */
function stopIn(today: readonly Step[]): number {
  const places = today.map((_, at) => at).slice(Math.floor(today.length / 2));
  const isFree = (at: number) =>
    today[at]?.timers.length === 0 && (today[at]?.tally?.count ?? 0) > 1;
  const besideClamps = places.find(at => isFree(at) && (today[at - 1]?.timers.length ?? 0) > 0);
  return besideClamps ?? places.find(isFree) ?? Math.ceil(today.length / 2);
}

function stepsOf({ steps }: Plan, ids: readonly string[]): readonly Step[] {
  return steps.filter(({ id }) => ids.includes(id));
}

function lengthMs(steps: readonly Step[]): number {
  return steps.reduce((sum, { minutes }) => sum + minutes.value * MINUTE_MS, 0);
}

/** Each step done when its minutes are over, its pieces counted and its checks made. */
function doneFrom(steps: readonly Step[], fromMs: number): readonly Event[] {
  return steps.flatMap((step, i): Event[] => {
    const atMs = fromMs + lengthMs(steps.slice(0, i + 1));
    const { id, tally, look } = step;
    return [
      ...(tally === undefined
        ? []
        : [{ kind: 'piece-done', atMs, step: id, count: tally.count } as const]),
      ...look.map((_, check): Event => ({ kind: 'check-made', atMs, step: id, check })),
      { kind: 'step-done', atMs, step: id },
    ];
  });
}

/** Every caution of these steps was read aloud, and their tools were signed off, before the first of them. */
function briefedFor(steps: readonly Step[], atMs: number): readonly Event[] {
  const cautions = [...new Set(steps.flatMap(step => step.care))];
  const tools = [...new Set(steps.flatMap(step => step.tools))];
  return [
    ...cautions.map((caution): Event => ({ kind: 'briefed', atMs, caution })),
    { kind: 'tools-briefed', atMs, tools },
  ];
}

function closing(steps: readonly Step[], atMs: number): readonly Event[] {
  const last = steps.at(-1);
  if (last === undefined) return [];
  const note = 'Cut pieces are on the rack, stickered. The stop is still set: leave it.';
  return [{ kind: 'paused', atMs, step: last.id, note }];
}

/** Half of the pieces of the step that is being worked on. */
function begun(step: Step | undefined, atMs: number): readonly Event[] {
  if (step === undefined) return [];
  const visited: Event = { kind: 'step-visited', atMs, step: step.id };
  const count = Math.floor((step.tally?.count ?? 0) / 2);
  return count === 0 ? [visited] : [visited, { kind: 'piece-done', atMs, step: step.id, count }];
}

function timersOf(step: Step | undefined, nowMs: number): readonly Event[] {
  if (step === undefined) return [];
  return step.timers.map(timer => {
    const startedMs = nowMs - Math.max(0, timer.minutes - LEFT_MINUTES) * MINUTE_MS;
    return timerStarted(timer, step, startedMs);
  });
}
