import type { Mm } from '../../../measure/quantities.js';
import type { MeasureRow } from '../../../plan/measures.js';
import type { SquareRow } from '../../../plan/squares.js';
import type { CutStep } from '../../../plan/work-so-far.js';
import type { Event } from '../../../workbook/events.js';
import type { Build, Context, Outcome } from '../../screen.js';
import { type Field, fieldOf } from '../../widgets/field.js';
import { LIST_TOP, type ListState } from '../../widgets/list.js';
import { asksForFirst, nextMove } from '../step/next-move.js';
import { stepAtHand } from '../step/shown-step.js';
import { toMeasure } from '../step/to-measure.js';

/** What is said about something measured, and what each key writes down. */
export type Answer = {
  readonly verdict: string;
  readonly blocks: readonly { readonly title: string; readonly lines: readonly string[] }[];
  /** Written on the big key; none where it only goes back. */
  readonly take: readonly Event[];
  /** What the big key does, in words. */
  readonly does: string;
  /** A second way out, where there is one. */
  readonly leave?: { readonly does: string; readonly events: readonly Event[] };
};

/** What is measured, its readings, and then what follows from it. */
export type Stage =
  | { readonly kind: 'what'; readonly list: ListState }
  /** It was measured before: again, or back to the plan. */
  | { readonly kind: 'again'; readonly row: MeasureRow; readonly list: ListState }
  | ReadingStage
  | AnswerStage;

/** Lengths typed one by one. */
export type ReadingStage = {
  readonly kind: 'reading';
  readonly of: Asked;
  readonly read: readonly Mm[];
  readonly field: Field;
};

export type Asked =
  | { readonly kind: 'length'; readonly row: MeasureRow }
  | { readonly kind: 'first'; readonly cutting: CutStep }
  | { readonly kind: 'diagonals'; readonly frame: SquareRow };

export type AnswerStage = {
  readonly kind: 'answer';
  readonly answer: Answer;
  readonly top: number;
  readonly from: Stage;
};

export type MeasureState = { readonly stage: Stage };

export type Bench = { readonly build: Build; readonly at: Context };

export const EMPTY: Field = fieldOf('');

/** At the line for the first piece where that is what the step waits for; a number typed there is its length. */
export function open(at: Context): MeasureState {
  const first = at.build === undefined ? undefined : firstAtHand({ build: at.build, at });
  return first === undefined
    ? { stage: { kind: 'what', list: LIST_TOP } }
    : { stage: { kind: 'reading', of: { kind: 'first', cutting: first }, read: [], field: EMPTY } };
}

function firstAtHand({ build, at }: Bench): CutStep | undefined {
  const step = stepAtHand(build, at);
  if (step === undefined || !asksForFirst(nextMove(step, build, at.nowMs), step)) return undefined;
  return toMeasure(step, build.plan).cutting;
}

export function show(stage: Stage): Outcome<MeasureState> {
  return { state: { stage }, asks: [] };
}

export function stay(state: MeasureState): Outcome<MeasureState> {
  return { state, asks: [] };
}

export function leave(state: MeasureState): Outcome<MeasureState> {
  return { state, asks: [{ kind: 'leave' }] };
}

/** Written down, and back to the step, which is another one where the plan has changed. */
export function written(state: MeasureState, events: readonly Event[]): Outcome<MeasureState> {
  if (events.length === 0) return leave(state);
  return {
    state,
    asks: [
      { kind: 'record', events },
      { kind: 'go', to: 'step' },
    ],
  };
}

/** So many readings are asked for; a length may have as many as one likes. */
export function wantedOf({ kind }: Asked): number {
  return { length: Number.POSITIVE_INFINITY, first: 1, diagonals: 2 }[kind];
}
