import type { Step } from '../plan/plan.js';
import type { Event } from './events.js';
import {
  doneCount,
  isCheckMade,
  isDone,
  stepToReturn,
  type TallySoFar,
  tallyOf,
} from './next-step.js';
import { standingEvents } from './taken-back.js';
import { thisSession } from './this-session.js';
import { endsAtMs, isUp, ringing } from './timers.js';
import type { Progress, Timer, Workbook } from './workbook.js';

/** What somebody needs to hear who comes back after days. */
export type Recap = {
  /** The newest entry about a step that is still in the plan. */
  readonly lastDone: LastDone | undefined;
  /** The instant of the last entry that somebody made at the bench or at the pause; none in a new build. */
  readonly lastHereMs: number | undefined;
  readonly note: NoteLeft | undefined;
  /** Timers that ran out and that nobody has silenced, the first one at the front. */
  readonly ranOut: readonly { readonly timer: Timer; readonly endedAtMs: number }[];
  /** Timers still running: what is clamped or wet. */
  readonly running: readonly { readonly timer: Timer; readonly endsAtMs: number }[];
  readonly halfDone: readonly HalfDone[];
  /** The step to go on with; none when all are done. */
  readonly next: Step | undefined;
  readonly stepsDone: number;
  readonly stepsInAll: number;
};

export type LastDone = {
  readonly atMs: number;
  readonly step: string;
  readonly title: string;
  /** `step done`, `3 pieces done`, `check made`, `timer started: Clamps on the end panels`. */
  readonly words: string;
};

export type NoteLeft = { readonly atMs: number; readonly step: string; readonly text: string };

export type HalfDone = {
  readonly step: string;
  readonly title: string;
  /** 7 of 12 posts; none where nothing is counted or the first is still to come. */
  readonly tally: TallySoFar | undefined;
  readonly checksMade: number;
  readonly checksInAll: number;
};

/** A build from where it was left: last thing done, note, waits that are over, next move. */
export function recap(
  workbook: Workbook,
  steps: readonly Step[],
  progress: Progress,
  nowMs: number,
): Recap {
  return {
    lastDone: lastDone(standingEvents(workbook.events), steps),
    lastHereMs: workbook.events.findLast(({ kind }) => !FROM_AFAR.includes(kind))?.atMs,
    note: noteLeft(workbook, steps, progress),
    ranOut: ringing(progress, nowMs).map(timer => ({ timer, endedAtMs: endsAtMs(timer) })),
    running: progress.timers
      .filter(timer => !isUp(timer, nowMs))
      .map(timer => ({ timer, endsAtMs: endsAtMs(timer) })),
    halfDone: halfDone(steps, progress),
    next: stepToReturn(steps, progress),
    stepsDone: doneCount(steps, progress),
    stepsInAll: steps.length,
  };
}

/** Noted from any page, by somebody who has not come back to the work yet. */
const FROM_AFAR: readonly Event['kind'][] = [
  'timer-silenced',
  'timer-snoozed',
  'clock-set-back',
  'day-told',
];

function lastDone(events: readonly Event[], steps: readonly Step[]): LastDone | undefined {
  for (const event of events.toReversed()) {
    const words = wordsOf(event);
    const step = 'step' in event ? steps.find(({ id }) => id === event.step) : undefined;
    if (words !== undefined && step !== undefined) {
      return { atMs: event.atMs, step: step.id, title: step.title, words };
    }
  }
  return undefined;
}

/** None for entries that are not work. */
function wordsOf(event: Event): string | undefined {
  if (event.kind === 'step-done') return 'step done';
  if (event.kind === 'check-made') return 'check made';
  if (event.kind === 'timer-started') return `timer started: ${event.name}`;
  if (event.kind === 'size-measured') return 'a length measured';
  if (event.kind === 'first-measured') return 'the first piece measured';
  if (event.kind === 'diagonals-measured') return 'diagonals measured';
  if (event.kind === 'piece-spoiled') return '1 piece spoiled, to be cut again';
  if (event.kind !== 'piece-done') return undefined;
  return event.count === 1 ? '1 piece done' : `${event.count} pieces done`;
}

/** The newest note of this session, at work or at the pause, else of a step that is still to be done. */
function noteLeft(
  { events }: Workbook,
  steps: readonly Step[],
  progress: Progress,
): NoteLeft | undefined {
  const openedAtMs = thisSession(events)[0]?.atMs ?? 0;
  const isOpen = (id: string) => steps.some(step => step.id === id && !isDone(step, progress));
  return progress.notes.findLast(({ atMs, step }) => atMs >= openedAtMs || isOpen(step));
}

/** A count that is full is only half done too, as long as its step is not ticked off. */
function halfDone(steps: readonly Step[], progress: Progress): readonly HalfDone[] {
  return steps
    .filter(step => !isDone(step, progress))
    .map(step => begun(step, progress))
    .filter(({ tally, checksMade }) => tally !== undefined || checksMade > 0);
}

function begun(step: Step, progress: Progress): HalfDone {
  const tally = tallyOf(step, progress);
  return {
    step: step.id,
    title: step.title,
    tally: tally !== undefined && tally.done > 0 ? tally : undefined,
    checksMade: step.look.filter((_, number) => isCheckMade(step, number, progress)).length,
    checksInAll: step.look.length,
  };
}
