import { MISTAKES } from '../../../materials/mistakes.js';
import type { Context, Key, Outcome } from '../../screen.js';
import { fieldText, typeInto } from '../../widgets/field.js';
import { LIST_TOP } from '../../widgets/list.js';
import { pressList } from '../../widgets/list-keys.js';
import { scrollTo } from '../../widgets/scroll.js';
import { boardsThere } from './bad-board.js';
import { choicesOf } from './choices.js';
import type { ListStage } from './list-lines.js';
import { bodyRoom, isReadToEnd, listRoom } from './room.js';
import {
  accept,
  type Bench,
  EMPTY,
  leave,
  type MistakeState,
  SLIPS,
  type Stage,
  show,
  stay,
} from './state.js';
import { answerOfLine, type LineStage } from './typed-line.js';

type At<Kind extends Stage['kind']> = Extract<Stage, { readonly kind: Kind }>;

/** Escape leaves and changes nothing, wherever one is. */
export function press(state: MistakeState, key: Key, at: Context): Outcome<MistakeState> {
  const { build } = at;
  if (build === undefined || key.name === 'escape') return leave(state);
  const bench = { build, at };
  const { stage } = state;
  switch (stage.kind) {
    case 'piece':
    case 'what':
    case 'section':
    case 'bad-board':
    case 'rule-pages':
      return inList(state, stage, { key, bench });
    case 'left':
    case 'board':
    case 'bad-stretch':
      return inField(state, stage, { key, bench });
    case 'answer':
      return inAnswer(state, stage, { key, bench });
    case 'rule-page':
      return inRulePage(state, stage, { key, bench });
  }
}

type Pressed = { readonly key: Key; readonly bench: Bench };

function inList(state: MistakeState, stage: ListStage, { key, bench }: Pressed) {
  const pressed = pressList(stage.list, key, listRoom(stage, bench));
  switch (pressed.kind) {
    case 'take':
      return chosen(state, { ...stage, list: pressed.list }, bench);
    case 'move':
      return show({ ...stage, list: pressed.list });
    case 'back':
      return back(state, stage);
    case 'keys':
      return asksForKeys(state);
    case 'none':
      return stay(state);
  }
}

/** The marked line is taken. */
function chosen(state: MistakeState, stage: ListStage, bench: Bench): Outcome<MistakeState> {
  const { build } = bench;
  const { row } = stage.list;
  switch (stage.kind) {
    case 'piece': {
      const choice = choicesOf(bench)[row];
      if (choice === undefined) return stay(state);
      if (choice.kind === 'piece') return show({ kind: 'what', choice, list: LIST_TOP });
      if (choice.kind === 'rule-pages')
        return show({ kind: 'rule-pages', list: LIST_TOP, from: stage });
      const [only, ...more] = build.plan.purchases;
      return only !== undefined && more.length === 0
        ? show(ofSection(choice.kind, only.section))
        : show({ kind: 'section', then: choice.kind, list: LIST_TOP });
    }
    case 'what': {
      const slip = SLIPS[row];
      if (slip === undefined) return stay(state);
      return show({ kind: 'left', choice: stage.choice, what: slip.kind, field: EMPTY });
    }
    case 'section': {
      const purchase = build.plan.purchases[row];
      if (purchase === undefined) return stay(state);
      return show(ofSection(stage.then, purchase.section));
    }
    case 'bad-board': {
      const there = boardsThere(stage.section, build)[row];
      if (there === undefined) return stay(state);
      return show({ kind: 'bad-stretch', section: stage.section, there, field: EMPTY });
    }
    case 'rule-pages': {
      const page = MISTAKES[row];
      return page === undefined
        ? stay(state)
        : show({ kind: 'rule-page', page: page.id, top: 0, from: stage });
    }
  }
}

/** What is asked once it is known which kind of board it is. */
function ofSection(about: 'board' | 'bad-board', section: string): Stage {
  return about === 'board'
    ? { kind: 'board', section, field: EMPTY }
    : { kind: 'bad-board', section, list: LIST_TOP };
}

/** One question back; from the first one out. */
function back(state: MistakeState, stage: Stage): Outcome<MistakeState> {
  switch (stage.kind) {
    case 'piece':
      return leave(state);
    case 'left':
      return show({ kind: 'what', choice: stage.choice, list: LIST_TOP });
    case 'bad-stretch':
      return show({ kind: 'bad-board', section: stage.section, list: LIST_TOP });
    case 'answer':
    case 'rule-pages':
    case 'rule-page':
      return show(stage.from);
    default:
      return show({ kind: 'piece', list: LIST_TOP });
  }
}

function inField(state: MistakeState, stage: LineStage, { key, bench }: Pressed) {
  const empty = fieldText(stage.field) === '';
  if (key.name === 'page-up' || (key.name === 'backspace' && empty)) return back(state, stage);
  if (key.name === 'character' && key.text === '?') return asksForKeys(state);
  if (key.name === 'enter' || key.name === 'page-down') return entered(state, stage, bench);
  const field = typeInto(stage.field, key);
  return field === undefined ? stay(state) : show({ ...stage, field });
}

function entered(state: MistakeState, stage: LineStage, { build, at }: Bench) {
  const answer = answerOfLine(stage, build, at.nowMs);
  return answer === undefined ? stay(state) : show({ kind: 'answer', answer, top: 0, from: stage });
}

function inAnswer(state: MistakeState, stage: At<'answer'>, { key, bench }: Pressed) {
  const { answer } = stage;
  switch (key.name) {
    case 'space':
    case 'enter':
    case 'page-down':
      if (!isReadToEnd(stage, bench)) {
        return scrolled(state, stage, { key: { name: 'page-down' }, bench });
      }
      return accept(state, answer.event && { ...answer.event, atMs: bench.at.nowMs });
    case 'backspace':
    case 'left':
    case 'page-up':
      return back(state, stage);
    case 'character':
      if (key.text === '?') return asksForKeys(state);
      return key.text === 'r' && answer.page !== undefined
        ? show({ kind: 'rule-page', page: answer.page, top: 0, from: stage })
        : stay(state);
    default:
      return scrolled(state, stage, { key, bench });
  }
}

function inRulePage(state: MistakeState, stage: At<'rule-page'>, { key, bench }: Pressed) {
  if (['space', 'enter', 'backspace', 'left'].includes(key.name)) return back(state, stage);
  if (key.name === 'character' && key.text === '?') return asksForKeys(state);
  return scrolled(state, stage, { key, bench });
}

function scrolled(
  state: MistakeState,
  stage: At<'answer' | 'rule-page'>,
  { key, bench }: Pressed,
): Outcome<MistakeState> {
  const top = scrollTo(stage.top, key, bodyRoom(stage, bench));
  return top === undefined ? stay(state) : show({ ...stage, top });
}

function asksForKeys(state: MistakeState): Outcome<MistakeState> {
  return { state, asks: [{ kind: 'go', to: 'keys' }] };
}
