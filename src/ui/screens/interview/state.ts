import type { Parsed } from '../../../measure/parsed.js';
import { parsed } from '../../../measure/parsed.js';
import type { Display } from '../../../measure/quantities.js';
import { usualAnswer } from '../../../recipe/answers/usual-answer.js';
import { answerScope, answerText, askedQuestions, parseAnswer } from '../../../recipe/questions.js';
import type { Option, Question, Recipe } from '../../../recipe/recipe.js';
import type { Answer, Answers } from '../../../recipe/values.js';
import { LIST_TOP, type ListState } from '../../widgets/list.js';
import { type Suggested, suggest, suggestedText } from '../../widgets/suggested.js';
import { type Effect, effectOf, NO_EFFECT } from './effect.js';

/** What is being answered: a line of text, or the marked one of the options. */
export type Draft =
  | ({ readonly kind: 'line' } & Suggested)
  | { readonly kind: 'options'; readonly list: ListState };

export type Stage =
  | { readonly kind: 'question'; readonly id: string; readonly draft: Draft }
  | { readonly kind: 'review'; readonly list: ListState }
  | { readonly kind: 'name'; readonly name: Suggested };

export type InterviewState = {
  readonly recipe: Recipe;
  readonly display: Display;
  /** What was answered; the rest has its usual answer. */
  readonly answers: Answers;
  readonly stage: Stage;
  /** A question that was opened from the review goes back to it. */
  readonly reviewing: boolean;
  /** Leaving was asked for, which forgets the answers. */
  readonly leaving: boolean;
  readonly effect: Effect;
  /** Answers whose effect is still to be worked out, in the next pause. */
  readonly pending: Answers | undefined;
};

/** Everything answered, as it stands with the usual answers for the rest. */
export function completeAnswers(recipe: Recipe, answers: Answers): Answers {
  const scope = answerScope(recipe, answers);
  const questions = recipe.groups.flatMap(group => group.questions);
  return Object.fromEntries(
    questions.map(question => [question.id, answers[question.id] ?? usualAnswer(question, scope)]),
  );
}

export function asked({ recipe, answers }: InterviewState): readonly Question[] {
  return askedQuestions(recipe, completeAnswers(recipe, answers));
}

export function questionOf({ recipe }: InterviewState, id: string): Question {
  const found = recipe.groups.flatMap(group => group.questions).find(one => one.id === id);
  if (found === undefined) throw new Error(`no question ${id}`);
  return found;
}

const YES_OR_NO: readonly Option[] = [
  { id: 'yes', say: 'Yes', why: '' },
  { id: 'no', say: 'No', why: '' },
];

/** What can be chosen; nothing where the answer is typed. */
export function optionsOf({ kind, options }: Question): readonly Option[] {
  if (kind === 'yes') return YES_OR_NO;
  return kind === 'choice' ? options : [];
}

/** The answer that stands in the draft, or what is wrong with it. */
export function draftAnswer(state: InterviewState, id: string, draft: Draft): Parsed<Answer> {
  const question = questionOf(state, id);
  if (draft.kind === 'line') {
    const scope = answerScope(state.recipe, state.answers);
    return parseAnswer(question, suggestedText(draft), { display: state.display, scope });
  }
  const chosen = optionsOf(question)[draft.list.row]?.id ?? '';
  return question.kind === 'yes'
    ? parsed({ kind: 'yes', value: chosen === 'yes' })
    : parsed({ kind: 'choice', value: chosen });
}

/** The state at a question, what was answered or is usual standing in it. */
export function atQuestion(state: InterviewState, id: string): InterviewState {
  const question = questionOf(state, id);
  const answer =
    state.answers[id] ?? usualAnswer(question, answerScope(state.recipe, state.answers));
  const draft = draftOf(question, answer, state.display);
  return withEffect({ ...state, leaving: false, stage: { kind: 'question', id, draft } });
}

function draftOf(question: Question, answer: Answer, display: Display): Draft {
  const options = optionsOf(question);
  if (options.length === 0) {
    return { kind: 'line', ...suggest(answerText(question, answer, display)) };
  }
  const id = answer.kind === 'yes' ? (answer.value ? 'yes' : 'no') : answer.value;
  const row = options.findIndex(option => option.id === id);
  return { kind: 'options', list: { row: Math.max(0, row), top: 0 } };
}

export function atReview(state: InterviewState, list: ListState = LIST_TOP): InterviewState {
  return withEffect({
    ...state,
    leaving: false,
    reviewing: false,
    stage: { kind: 'review', list },
  });
}

/** To be worked out anew for the answers as they stand, the one being given included. */
export function withEffect(before: InterviewState): InterviewState {
  const { recipe, stage } = before;
  const state = { ...before, effect: { ...before.effect, current: false } };
  const answer = stage.kind === 'question' ? draftAnswer(state, stage.id, stage.draft) : undefined;
  // A text that can't be read yet leaves standing what the last good one gave.
  if (answer?.ok === false) return { ...state, pending: undefined };
  const given =
    stage.kind === 'question' && answer !== undefined
      ? { ...state.answers, [stage.id]: answer.value }
      : state.answers;
  return { ...state, pending: completeAnswers(recipe, given) };
}

/** The state with its effect worked out, or nothing where it is already. */
export function settle(state: InterviewState): InterviewState | undefined {
  const { pending, recipe, display } = state;
  if (pending === undefined) return undefined;
  return { ...state, pending: undefined, effect: effectOf(recipe, pending, display) };
}

/** The beginning: the first question that was not answered before. */
export function begin(recipe: Recipe, answers: Answers, display: Display): InterviewState {
  const state: InterviewState = {
    recipe,
    display,
    answers,
    stage: { kind: 'review', list: LIST_TOP },
    reviewing: false,
    leaving: false,
    effect: NO_EFFECT,
    pending: completeAnswers(recipe, answers),
  };
  const [first] = asked(state).filter(({ id }) => answers[id] === undefined);
  return first === undefined ? state : atQuestion(state, first.id);
}
