import { type DayVerdict, dayVerdict } from '../../../plan/day-verdict.js';
import type { Step, StepTimer } from '../../../plan/plan.js';
import { type DayWork, toldToday } from '../../../plan/told-day.js';
import { clockMinutes } from '../../../workbook/clock-words.js';
import { isAnotherAwaited } from '../../../workbook/first-at-stop.js';
import { isCheckMade, isDone, type TallySoFar, tallyOf } from '../../../workbook/next-step.js';
import { standingEvents } from '../../../workbook/taken-back.js';
import { isUp } from '../../../workbook/timers.js';
import type { Timer } from '../../../workbook/workbook.js';
import type { Build } from '../../screen.js';
import { type Briefing, nextBriefing } from './briefing-pages.js';
import { openTimeDue } from './open-in-glue-up.js';

/** What one press of the big key does now. */
export type Move =
  /** A caution is read aloud, or a tool is told about and asked back, for the first time in this build. */
  | ({ readonly kind: 'brief' } & Briefing)
  | { readonly kind: 'count'; readonly tally: TallySoFar }
  | { readonly kind: 'check'; readonly check: number }
  /** The first piece came out wrong: with the stop moved, another one is cut and measured. */
  | { readonly kind: 'measure-first' }
  | { readonly kind: 'start-timer'; readonly timer: StepTimer }
  /** Nothing: a timer has to run out before the rest of this step, or before it begins. */
  | { readonly kind: 'wait'; readonly timer: Timer; readonly begins: boolean }
  /** The step wants a day that suits it, and nobody said today what the day is like. */
  | { readonly kind: 'tell-day'; readonly work: DayWork }
  | { readonly kind: 'not-today'; readonly work: DayWork; readonly verdict: DayVerdict }
  | { readonly kind: 'finish' }
  /** The step is done already: on to the next one. */
  | { readonly kind: 'go-on' };

/**
 * Waits that earlier steps began, then briefings, then the first piece and its check, the other pieces, each glue-up
 * with its open time, then checks, then the timer, then done. A step with several timers runs all
 * but the last one before its checks: sealer soaks in, is wiped, is looked at, and then dries.
 */
export function nextMove(step: Step, build: Build, nowMs: number): Move {
  const { progress } = build;
  if (isDone(step, progress)) return { kind: 'go-on' };
  const held = stillRunning(step.after, build, nowMs);
  if (held !== undefined) return { kind: 'wait', timer: held, begins: true };
  const briefing = nextBriefing(step, build);
  if (briefing !== undefined) return { kind: 'brief', ...briefing };
  const day = dayMove(step, build, nowMs);
  if (day !== undefined) return day;
  const tally = tallyOf(step, progress);
  const first = firstMove(step, tally, build);
  if (first !== undefined) return first;
  const open = openTimeDue(step, build);
  if (open !== undefined) return { kind: 'start-timer', timer: open };
  if (tally !== undefined && tally.done < tally.count) return { kind: 'count', tally };
  const early = timerMove(step.timers.slice(0, -1), build, nowMs);
  if (early !== undefined) return early;
  const check = openChecks(step, build)[0];
  if (check !== undefined) return { kind: 'check', check };
  const last = step.timers.at(-1);
  if (last !== undefined && !wasStarted(last, build)) return { kind: 'start-timer', timer: last };
  return { kind: 'finish' };
}

/** The first piece is cut, and the step waits for what it measures. */
export function asksForFirst(move: Move, { firstCheck }: Step): boolean {
  return move.kind === 'measure-first' || (move.kind === 'check' && firstCheck && move.check === 0);
}

/** The first piece waits for the tape; where it was short and is kept, the one after it does. */
function firstMove(step: Step, tally: TallySoFar | undefined, build: Build): Move | undefined {
  if (tally === undefined || tally.done === 0 || !step.firstCheck) return undefined;
  if (openChecks(step, build)[0] !== 0) return undefined;
  const measure: Move = { kind: 'measure-first' };
  const check: Move = { kind: 'check', check: 0 };
  if (isAnotherAwaited(step.id, build.workbook.events))
    return tally.done < tally.count ? measure : check;
  if (tally.done > 1) return undefined;
  return isFirstWrong(step, build) ? measure : check;
}

function isFirstWrong({ id }: Step, { progress }: Build): boolean {
  const last = progress.found.readings.findLast(
    reading => reading.kind === 'first-measured' && reading.step === id,
  );
  return last?.kind === 'first-measured' && !last.isRight;
}

/** Before glue or sealer is opened: what the day is like, and whether it will do. Not once a wait has begun. */
function dayMove(step: Step, build: Build, nowMs: number): Move | undefined {
  const { day: work } = step;
  if (work === undefined || step.timers.some(timer => wasStarted(timer, build))) return undefined;
  const verdict = todaysVerdict(work, build, nowMs);
  if (verdict === undefined) return { kind: 'tell-day', work };
  return verdict.kind === 'not-today' ? { kind: 'not-today', work, verdict } : undefined;
}

/** What the day that was told is good for at this moment; nothing where it was not told today. */
export function todaysVerdict(
  work: DayWork,
  { plan, progress }: Build,
  nowMs: number,
): DayVerdict | undefined {
  const told = toldToday(progress.days, work, nowMs);
  if (told === undefined) return undefined;
  return dayVerdict(work, told, { display: plan.display, clockMinutes: clockMinutes(nowMs) });
}

/** Numbers, from 0, of the checks still to be made. */
export function openChecks(step: Step, { progress }: Build): readonly number[] {
  return step.look.flatMap((_, number) => (isCheckMade(step, number, progress) ? [] : [number]));
}

/** Was it ever started for this step, whether it still runs or was stopped? */
export function wasStarted({ id }: StepTimer, { workbook }: Build): boolean {
  return standingEvents(workbook.events).some(
    event => event.kind === 'timer-started' && event.timer === id,
  );
}

/** The timer of that id, running or up. */
export function timerById(id: string, { progress }: Build): Timer | undefined {
  return progress.timers.find(timer => timer.id === id);
}

/** A timer of an earlier step that this one must wait for: clamps that hold, sealer that dries. */
function stillRunning(ids: readonly string[], build: Build, nowMs: number): Timer | undefined {
  return build.progress.timers.find(timer => ids.includes(timer.id) && !isUp(timer, nowMs));
}

function timerMove(timers: readonly StepTimer[], build: Build, nowMs: number): Move | undefined {
  for (const timer of timers) {
    if (!wasStarted(timer, build)) return { kind: 'start-timer', timer };
    const running = timerById(timer.id, build);
    if (running !== undefined && !isUp(running, nowMs)) {
      return { kind: 'wait', timer: running, begins: false };
    }
  }
  return undefined;
}
