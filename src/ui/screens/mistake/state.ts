import type { Event, SlipKind } from '../../../workbook/events.js';
import type { Build, Context, Outcome } from '../../screen.js';
import { type Field, fieldOf } from '../../widgets/field.js';
import { LIST_TOP, type ListState } from '../../widgets/list.js';
import type { Answer } from './answer.js';
import type { BoardThere } from './bad-board.js';
import type { PieceChoice } from './choices.js';

/** What went wrong, in the order in which it is asked. */
export const SLIPS: readonly { readonly kind: SlipKind; readonly say: string }[] = [
  { kind: 'short', say: 'Cut too short, or it measures short' },
  { kind: 'wrong-side', say: 'Cut on the wrong side of the line' },
  { kind: 'split', say: 'Split, broken, or a knot in the wrong place' },
  { kind: 'other', say: 'Wrong notch, wrong angle, or something else' },
];

/** Which piece, what happened, what is left, and then the answer. */
export type Stage =
  | { readonly kind: 'piece'; readonly list: ListState }
  | { readonly kind: 'what'; readonly choice: PieceChoice; readonly list: ListState }
  | {
      readonly kind: 'left';
      readonly choice: PieceChoice;
      readonly what: SlipKind;
      readonly field: Field;
    }
  | { readonly kind: 'section'; readonly then: 'board' | 'bad-board'; readonly list: ListState }
  | { readonly kind: 'bad-board'; readonly section: string; readonly list: ListState }
  | {
      readonly kind: 'bad-stretch';
      readonly section: string;
      readonly there: BoardThere;
      readonly field: Field;
    }
  | { readonly kind: 'board'; readonly section: string; readonly field: Field }
  | AnswerStage
  | { readonly kind: 'rule-pages'; readonly list: ListState; readonly from: Stage }
  | {
      readonly kind: 'rule-page';
      readonly page: string;
      readonly top: number;
      readonly from: Stage;
    };

export type AnswerStage = {
  readonly kind: 'answer';
  readonly answer: Answer;
  readonly top: number;
  readonly from: Stage;
};

export type MistakeState = { readonly stage: Stage };

export type Bench = { readonly build: Build; readonly at: Context };

export function open(): MistakeState {
  return { stage: { kind: 'piece', list: LIST_TOP } };
}

export function show(stage: Stage): Outcome<MistakeState> {
  return { state: { stage }, asks: [] };
}

export function stay(state: MistakeState): Outcome<MistakeState> {
  return { state, asks: [] };
}

export function leave(state: MistakeState): Outcome<MistakeState> {
  return { state, asks: [{ kind: 'leave' }] };
}

/** Written down, and back to the step that cuts the new one. */
export function accept(state: MistakeState, event: Event | undefined): Outcome<MistakeState> {
  if (event === undefined) return leave(state);
  return {
    state,
    asks: [
      { kind: 'record', events: [event] },
      { kind: 'go', to: 'step' },
    ],
  };
}

/** An empty line to type a length into. */
export const EMPTY: Field = fieldOf('');
