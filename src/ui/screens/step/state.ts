import type { Step, StepTimer } from '../../../plan/plan.js';
import type { Event } from '../../../workbook/events.js';
import { lastAct } from '../../../workbook/taken-back.js';
import { timerStarted } from '../../../workbook/timers.js';
import type { Sight } from '../../pictures.js';
import type { Ask, Build, Context, Outcome } from '../../screen.js';
import type { ListState } from '../../widgets/list.js';
import { stepAfter, stepToOpen } from './shown-step.js';

/** What is read over the step: why, cautions, the step in plain words, all words of the trade. */
export type ReadingKind = 'why' | 'cautions' | 'helper' | 'words';

/** What lies over the step, if anything. */
export type Pane =
  /** The step itself; `top` is set once somebody scrolls. */
  | { readonly kind: 'work'; readonly top?: number }
  | { readonly kind: ReadingKind; readonly top: number }
  | ({ readonly kind: 'picture' } & Sight)
  /** `asked`: a timer that runs already, or would begin before its glue-up is closed, and is asked about. */
  | { readonly kind: 'timers'; readonly asked?: string }
  | { readonly kind: 'note'; readonly text: string }
  | { readonly kind: 'list'; readonly list: ListState; readonly typed: string }
  | { readonly kind: 'take-back' | 'done-anyway' };

export type StepState = {
  /** Id of the step that is seen; none when all are done. */
  readonly step: string | undefined;
  readonly pane: Pane;
  /** When the big key last brought something new under the thumb. */
  readonly movedAtMs: number;
};

/** What a key is pressed at. */
export type Bench = {
  readonly build: Build;
  readonly step: Step | undefined;
  readonly at: Context;
};

export type StepBench = Bench & { readonly step: Step };

export const WORK: Pane = { kind: 'work' };

/** A key that bounces on the way in must not do anything here. */
export function open({ build, nowMs }: Context): StepState {
  const step = build === undefined ? undefined : stepToOpen(build)?.id;
  return { step, pane: WORK, movedAtMs: nowMs };
}

/** The step that is seen; none when all are done. */
export function shownStep({ step }: StepState, build: Build): Step | undefined {
  const found = build.plan.steps.find(({ id }) => id === step);
  // Measured lengths make other steps of the ones that cut: then the one that comes now is seen.
  return found ?? (step === undefined ? undefined : stepToOpen(build));
}

export function show(state: StepState): Outcome<StepState> {
  return { state, asks: [] };
}

export function asking(state: StepState, asks: readonly Ask[]): Outcome<StepState> {
  return { state, asks };
}

export function withPane(state: StepState, pane: Pane): Outcome<StepState> {
  return show({ ...state, pane });
}

/** Back to the step itself, with these events recorded. */
export function recording(state: StepState, events: readonly Event[]): Outcome<StepState> {
  return asking({ ...state, pane: WORK }, [{ kind: 'record', events }]);
}

/** Back to the step itself, with one of its timers started. */
export function startTimer(
  state: StepState,
  timer: StepTimer,
  { step, at }: StepBench,
): Outcome<StepState> {
  return recording(state, [timerStarted(timer, step, at.nowMs)]);
}

/** Another step, from its top. Looking is not working: a return finds the step that was worked at. */
export function toStep(state: StepState, step: Step | undefined): Outcome<StepState> {
  return show({ ...state, step: step?.id, pane: WORK });
}

/** The last act in the journal that can be taken back is struck, and its step is shown. */
export function takeBack(state: StepState, { build, at: { nowMs } }: Bench): Outcome<StepState> {
  const act = lastAct(build.workbook.events);
  const event = act.at(-1);
  if (event === undefined) return withPane(state, WORK);
  const step = 'step' in event ? event.step : state.step;
  const stays = step === undefined || step === state.step || event.kind === 'note-written';
  const visited: readonly Event[] = stays ? [] : [{ kind: 'step-visited', atMs: nowMs, step }];
  const events = act.map((): Event => ({ kind: 'taken-back', atMs: nowMs }));
  return recording({ ...state, step }, [...events, ...visited]);
}

/** Ticks the step off and shows the one that comes now. */
export function finish(
  state: StepState,
  step: Step,
  { build, nowMs }: { readonly build: Build; readonly nowMs: number },
): Outcome<StepState> {
  const next = stepAfter(step, build);
  const visited =
    next === undefined ? [] : [{ kind: 'step-visited', atMs: nowMs, step: next.id } as const];
  return recording({ ...state, step: next?.id, movedAtMs: nowMs }, [
    { kind: 'step-done', atMs: nowMs, step: step.id },
    ...visited,
  ]);
}
