import { isOpenTime } from '../plan/open-time.js';
import type { Event } from './events.js';
import {
  type Found,
  findMore,
  type MeasureEvent,
  NOTHING_FOUND,
  oneLess,
} from './measure-events.js';
import { standingEvents } from './taken-back.js';
import { isUp } from './timers.js';
import type { Progress, Timer } from './workbook.js';
import { workedUntil } from './worked-time.js';

/** Progress under way: the same fields, open for writing while a journal is gone through. */
type Draft = {
  started: boolean;
  readonly done: Set<string>;
  readonly tallies: Map<string, number>;
  readonly checks: Set<string>;
  readonly timers: Timer[];
  days: Progress['days'];
  readonly notes: Progress['notes'][number][];
  readonly briefed: Set<string>;
  readonly toolsBriefed: Map<string, number>;
  helperBefore: Progress['helperBefore'];
  found: Found;
  readonly rackChanges: Progress['rackChanges'][number][];
  paused: Progress['paused'];
  lastStep: string | undefined;
  lastAtMs: number | undefined;
  workedMs: number;
};

/** Every event but the one that strikes others: that one needs the whole journal. */
export type Advancing = Exclude<Event, { readonly kind: 'taken-back' }>;

/**
 * Where a build stands after its journal. What was taken back leaves no trace, except in the time
 * worked: that time was spent all the same. Pieces of one step add up.
 */
export function progressOf(events: readonly Event[]): Progress {
  const draft = blankDraft();
  for (const event of standingEvents(events)) apply(draft, event);
  return { ...draft, ...timesOf(events) };
}

/**
 * The same by one event, without going through the journal again:
 * `advance(progressOf(events), event)` is `progressOf([...events, event])`. After `taken-back` call
 * `progressOf` with the whole journal.
 */
export function advance(progress: Progress, event: Advancing): Progress {
  const workedMs = workedUntil(event, progress);
  const draft = draftOf(progress);
  apply(draft, event);
  return { ...draft, workedMs, lastAtMs: event.atMs };
}

function blankDraft(): Draft {
  return {
    started: false,
    done: new Set(),
    tallies: new Map(),
    checks: new Set(),
    timers: [],
    days: {},
    notes: [],
    briefed: new Set(),
    toolsBriefed: new Map(),
    helperBefore: undefined,
    found: NOTHING_FOUND,
    rackChanges: [],
    paused: undefined,
    lastStep: undefined,
    lastAtMs: undefined,
    workedMs: 0,
  };
}

function draftOf(progress: Progress): Draft {
  return {
    ...progress,
    done: new Set(progress.done),
    tallies: new Map(progress.tallies),
    checks: new Set(progress.checks),
    timers: [...progress.timers],
    notes: [...progress.notes],
    briefed: new Set(progress.briefed),
    toolsBriefed: new Map(progress.toolsBriefed),
    rackChanges: [...progress.rackChanges],
  };
}

/** Time goes by whether or not something is taken back, so all events count. */
function timesOf(events: readonly Event[]): Pick<Progress, 'workedMs' | 'lastAtMs'> {
  let paused: Progress['paused'];
  let workedMs = 0;
  let lastAtMs: number | undefined;
  for (const event of events) {
    workedMs = workedUntil(event, { workedMs, lastAtMs, paused });
    lastAtMs = event.atMs;
    if (event.kind === 'paused') paused = event;
    if (event.kind === 'resumed') paused = undefined;
  }
  return { workedMs, lastAtMs };
}

function apply(draft: Draft, event: Event): void {
  if ('step' in event && event.kind !== 'note-written') draft.lastStep = event.step;
  switch (event.kind) {
    case 'build-started':
      draft.started = true;
      return;
    case 'piece-done':
    case 'check-made':
    case 'step-done':
      applyWork(draft, event);
      return;
    case 'step-visited':
    case 'rags-laid':
    case 'taken-back':
      return;
    case 'timer-started':
    case 'timer-silenced':
    case 'timer-stopped':
    case 'timer-snoozed':
      applyTimer(draft.timers, event);
      return;
    case 'day-told': {
      const { kind: _, work, ...told } = event;
      draft.days = { ...draft.days, [work]: told };
      return;
    }
    case 'clock-set-back':
      setBack(draft, event.byMs);
      return;
    case 'note-written':
      addNote(draft, { atMs: event.atMs, step: event.step, text: event.text });
      return;
    case 'paused':
      pause(draft, event);
      return;
    case 'resumed':
      draft.paused = undefined;
      return;
    case 'briefed':
    case 'tools-briefed':
    case 'helper-came':
    case 'helper-changed':
      applyToHelper(draft, event);
      return;
    case 'size-measured':
    case 'measure-dropped':
    case 'first-measured':
    case 'diagonals-measured':
      applyMeasure(draft, event);
      return;
    case 'piece-spoiled':
    case 'board-added':
    case 'board-spoiled':
      applyToRack(draft, event);
      return;
    default:
      unknownEvent(event);
  }
}

/** What is left at a pause is a note about its step like any other. */
function addNote(draft: Draft, note: Progress['notes'][number]): void {
  if (note.text.trim() !== '') draft.notes.push(note);
}

type WorkEvent = Extract<Event, { readonly kind: 'piece-done' | 'check-made' | 'step-done' }>;

function applyWork(draft: Draft, event: WorkEvent): void {
  hearOpenTime(draft.timers, event);
  if (event.kind === 'step-done') draft.done.add(event.step);
  else if (event.kind === 'check-made') draft.checks.add(`${event.step}#${event.check}`);
  else draft.tallies.set(event.step, (draft.tallies.get(event.step) ?? 0) + event.count);
}

/** The door is shut. Open glue was told before; days later it is no news. */
function pause(draft: Draft, event: Extract<Event, { readonly kind: 'paused' }>): void {
  const { atMs, step, note } = event;
  draft.paused = { atMs, step, note };
  addNote(draft, { atMs, step, text: note });
  const open = draft.timers.findIndex(isOpenTime);
  if (open >= 0) draft.timers.splice(open, 1);
}

/** Whoever counts after the ring has heard it, and with the step the glue is closed: nobody has to say so apart. */
function hearOpenTime(timers: Timer[], { kind, step, atMs }: WorkEvent): void {
  const at = timers.findIndex(timer => timer.step === step && isOpenTime(timer));
  const open = timers[at];
  if (open === undefined) return;
  if (kind === 'step-done' || isUp(open, atMs)) timers.splice(at, 1);
}

/** A first piece that is right makes the check on it. */
function applyMeasure(draft: Draft, event: MeasureEvent): void {
  draft.found = findMore(draft.found, event);
  if (event.kind === 'first-measured' && event.ticks) draft.checks.add(`${event.step}#0`);
}

type HelperEvent = Extract<
  Event,
  { readonly kind: 'briefed' | 'tools-briefed' | 'helper-came' | 'helper-changed' }
>;

/** To another helper everything is told anew. */
function applyToHelper(draft: Draft, event: HelperEvent): void {
  switch (event.kind) {
    case 'briefed':
      draft.briefed.add(event.caution);
      return;
    case 'tools-briefed':
      for (const tool of event.tools) draft.toolsBriefed.set(tool, event.atMs);
      return;
    case 'helper-came': {
      const tools = new Map(event.tools.map(({ tool, atMs }) => [tool, atMs]));
      draft.helperBefore = { tools, alone: event.alone, together: event.together };
      return;
    }
    case 'helper-changed':
      draft.briefed.clear();
      draft.toolsBriefed.clear();
      draft.helperBefore = undefined;
  }
}

type RackEvent = Extract<
  Event,
  { readonly kind: 'piece-spoiled' | 'board-added' | 'board-spoiled' }
>;

/** A spoiled piece opens its step again, so that the new one is counted; how far all cutting was stays known. */
function applyToRack(draft: Draft, event: RackEvent): void {
  if (event.kind === 'piece-spoiled') {
    draft.tallies.set(event.step, event.good);
    draft.done.delete(event.step);
    draft.found = oneLess(draft.found, event.mark);
  }
  const soFar = { tallies: new Map(draft.tallies), done: new Set(draft.done) };
  if (event.kind === 'board-added') {
    const { section, length, count } = event;
    draft.rackChanges.push({ kind: 'added', section, length, count, ...soFar });
    return;
  }
  if (event.kind === 'board-spoiled') {
    draft.rackChanges.push({ ...event, ...soFar });
    return;
  }
  const { kind: _, good: __, ...told } = event;
  draft.rackChanges.push({ ...told, kind: 'spoiled', ...soFar });
}

type TimerEvent = Extract<Event, { readonly timer: string }>;

/** A timer that is started again under the same id starts afresh, at the end of the list. Open time is over once heard. */
function applyTimer(timers: Timer[], event: TimerEvent): void {
  const at = timers.findIndex(({ id }) => id === event.timer);
  const known = timers[at];
  if (event.kind === 'timer-silenced' && !(known && isOpenTime(known))) {
    if (known !== undefined) timers[at] = { ...known, silenced: true };
    return;
  }
  if (event.kind === 'timer-snoozed') {
    if (known !== undefined) timers[at] = { ...known, snoozedUntilMs: event.untilMs };
    return;
  }
  if (known !== undefined) timers.splice(at, 1);
  if (event.kind === 'timer-started') timers.push(startedTimer(event));
}

/** A wait lasts as long as it does: with the clock moved, its beginning moves too. */
function setBack(draft: Draft, byMs: number): void {
  draft.timers.forEach((timer, at) => {
    draft.timers[at] = {
      ...timer,
      startedAtMs: timer.startedAtMs - byMs,
      ...(timer.snoozedUntilMs !== undefined && { snoozedUntilMs: timer.snoozedUntilMs - byMs }),
    };
  });
}

function startedTimer(event: Extract<Event, { readonly kind: 'timer-started' }>): Timer {
  const { timer, name, step, atMs, lastsMinutes, then } = event;
  return { id: timer, name, step, startedAtMs: atMs, lastsMinutes, then, silenced: false };
}

function unknownEvent(event: never): never {
  throw new Error(`no such event: ${JSON.stringify(event)}`);
}
