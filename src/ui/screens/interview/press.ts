import type { Context, Key, Outcome } from '../../screen.js';
import { type ListState, listAt, moveList } from '../../widgets/list.js';
import { isUntyped, suggest, typeOver } from '../../widgets/suggested.js';
import { nameIn } from '../home/builds-level.js';
import { optionRows, reviewRows } from './room.js';
import {
  asked,
  atQuestion,
  atReview,
  completeAnswers,
  type Draft,
  draftAnswer,
  type InterviewState,
  optionsOf,
  questionOf,
  type Stage,
  settle,
  withEffect,
} from './state.js';

type At<Kind extends Stage['kind']> = Extract<Stage, { kind: Kind }>;

export function press(state: InterviewState, key: Key, at: Context): Outcome<InterviewState> {
  const { stage } = state;
  switch (stage.kind) {
    case 'question':
      return inQuestion(state, stage, { key, at });
    case 'review':
      return inReview(state, stage.list, { key, at });
    case 'name':
      return inName(state, stage, key);
  }
}

type Pressed = { readonly key: Key; readonly at: Context };

function inQuestion(
  state: InterviewState,
  stage: At<'question'>,
  { key, at }: Pressed,
): Outcome<InterviewState> {
  if (key.name === 'enter' || key.name === 'page-down') return show(accepted(state, stage));
  if (key.name === 'escape' || key.name === 'page-up') return back(state, stage);
  if (key.name === 'tab') return show(atReview(kept(state, stage)));
  if (key.name === 'character' && key.text === '?') {
    return { state, asks: [{ kind: 'go', to: 'keys' }] };
  }
  const { draft } = stage;
  if (key.name === 'left' && isAtStart(draft)) return back(state, stage);
  const next = draft.kind === 'line' ? typed(draft, key) : marked(state, stage, { key, at });
  if (next === undefined) return show(state);
  return show(withEffect({ ...state, leaving: false, stage: { ...stage, draft: next } }));
}

function isAtStart(draft: Draft): boolean {
  return draft.kind === 'options' || draft.field.before === '';
}

function typed(draft: Extract<Draft, { kind: 'line' }>, key: Key): Draft | undefined {
  const line = typeOver(draft, key);
  return line === undefined ? undefined : { kind: 'line', ...line };
}

function marked(
  state: InterviewState,
  { id, draft }: At<'question'>,
  { key, at }: Pressed,
): Draft | undefined {
  if (draft.kind !== 'options') return undefined;
  const question = questionOf(state, id);
  const room = { count: optionsOf(question).length, height: optionRows(question, at) };
  if (key.name === 'character' && /^[1-9]$/.test(key.text)) {
    const list = listAt(Number(key.text) - 1, draft.list, room);
    return { kind: 'options', list };
  }
  const list = moveList(draft.list, key, room);
  return list === undefined ? undefined : { kind: 'options', list };
}

/** With the answer that is being given, where it is a good one. */
function kept(state: InterviewState, { id, draft }: At<'question'>): InterviewState {
  const answer = draftAnswer(state, id, draft);
  if (!answer.ok) return state;
  return { ...state, answers: { ...state.answers, [id]: answer.value } };
}

function accepted(state: InterviewState, stage: At<'question'>): InterviewState {
  if (!draftAnswer(state, stage.id, stage.draft).ok) return state;
  const answered = kept(state, stage);
  const questions = asked(answered);
  const place = questions.findIndex(({ id }) => id === stage.id);
  if (state.reviewing) return atReview(answered, { row: place + 1, top: 0 });
  const next = questions[place + 1];
  return next === undefined ? atReview(answered) : atQuestion(answered, next.id);
}

function back(state: InterviewState, stage: At<'question'>): Outcome<InterviewState> {
  const questions = asked(state);
  const place = questions.findIndex(({ id }) => id === stage.id);
  if (state.reviewing) return show(atReview(state, { row: place + 1, top: 0 }));
  const before = questions[place - 1];
  if (before !== undefined) return show(atQuestion(keptIfChanged(state, stage), before.id));
  const forgets = Object.keys(state.answers).length > 0 && !state.leaving;
  return forgets ? show({ ...state, leaving: true }) : { state, asks: [{ kind: 'leave' }] };
}

/** Looking back must not turn every usual answer into a given one. */
function keptIfChanged(state: InterviewState, stage: At<'question'>): InterviewState {
  const { draft } = stage;
  return draft.kind === 'line' && isUntyped(draft) ? state : kept(state, stage);
}

function inReview(
  state: InterviewState,
  list: ListState,
  { key, at }: Pressed,
): Outcome<InterviewState> {
  const questions = asked(state);
  const isCopy = at.interview?.from !== undefined;
  if ((key.name === 'character' && key.text === 'q') || (key.name === 'escape' && isCopy)) {
    return left(state, at);
  }
  if (key.name === 'escape') {
    const last = questions.at(-1);
    return show(last === undefined ? state : atQuestion(state, last.id));
  }
  if (key.name === 'character' && key.text === '?') {
    return { state, asks: [{ kind: 'go', to: 'keys' }] };
  }
  if (key.name === 'enter' || key.name === 'space') {
    const question = questions[list.row - 1];
    if (question !== undefined) return show(atQuestion({ ...state, reviewing: true }, question.id));
    const worked = settle(state) ?? state;
    return show(worked.effect.plan === undefined ? worked : named(worked, at));
  }
  const moved = moveList(list, key, { count: questions.length + 1, height: reviewRows(at) });
  const stage = moved === undefined ? state.stage : { kind: 'review' as const, list: moved };
  return show({ ...state, leaving: false, stage });
}

/** Away from all answers at once; asked once where some were given that are kept nowhere else. */
function left(state: InterviewState, { interview }: Context): Outcome<InterviewState> {
  const { answers, leaving } = state;
  const forgets = Object.keys(answers).some(id => answers[id] !== interview?.answers[id]);
  return forgets && !leaving
    ? show({ ...state, leaving: true })
    : { state, asks: [{ kind: 'leave' }] };
}

function named(state: InterviewState, { shelf, interview }: Context): InterviewState {
  const taken = new Set(shelf.map(({ name }) => name));
  const title = interview?.from ?? state.recipe.title;
  const names = [title, ...Array.from({ length: taken.size + 1 }, (_, i) => `${title} ${i + 2}`)];
  const name = names.find(one => !taken.has(one)) ?? title;
  return { ...state, stage: { kind: 'name', name: suggest(name) } };
}

function inName(state: InterviewState, { name }: At<'name'>, key: Key): Outcome<InterviewState> {
  if (key.name === 'escape' || key.name === 'page-up') return show(atReview(state));
  if (key.name !== 'enter') {
    return show({ ...state, stage: { kind: 'name', name: typeOver(name, key) ?? name } });
  }
  const { recipe, answers } = state;
  return {
    state,
    asks: [
      {
        kind: 'start-build',
        recipe: recipe.id,
        name: nameIn(name),
        answers: completeAnswers(recipe, answers),
      },
    ],
  };
}

function show(state: InterviewState): Outcome<InterviewState> {
  return { state, asks: [] };
}
