import type { Mm } from '../../../measure/quantities.js';
import type { Context, Key, Outcome } from '../../screen.js';
import { fieldText, typeInto } from '../../widgets/field.js';
import { LIST_TOP } from '../../widgets/list.js';
import { pressList } from '../../widgets/list-keys.js';
import { scrollTo } from '../../widgets/scroll.js';
import { answerToDropping, answerToLength } from './answer-length.js';
import { answerToDiagonals, answerToFirst } from './answer-saw.js';
import { choicesOf } from './choices.js';
import { bodyRoom, isReadToEnd, listRoom } from './room.js';
import {
  type Answer,
  type AnswerStage,
  type Bench,
  EMPTY,
  leave,
  type MeasureState,
  type ReadingStage,
  type Stage,
  show,
  stay,
  wantedOf,
  written,
} from './state.js';
import { typedReading } from './typed.js';

type At<Kind extends Stage['kind']> = Extract<Stage, { readonly kind: Kind }>;
type Pressed = { readonly key: Key; readonly bench: Bench };

/** Escape leaves and changes nothing, wherever one is. */
export function press(state: MeasureState, key: Key, at: Context): Outcome<MeasureState> {
  const { build } = at;
  if (build === undefined || key.name === 'escape') return leave(state);
  const bench = { build, at };
  const { stage } = state;
  switch (stage.kind) {
    case 'what':
    case 'again':
      return inList(state, stage, { key, bench });
    case 'reading':
      return inReading(state, stage, { key, bench });
    case 'answer':
      return inAnswer(state, stage, { key, bench });
  }
}

function inList(state: MeasureState, stage: At<'what' | 'again'>, { key, bench }: Pressed) {
  const pressed = pressList(stage.list, key, listRoom(stage, bench));
  switch (pressed.kind) {
    case 'take':
      return chosen(state, { ...stage, list: pressed.list }, bench);
    case 'move':
      return show({ ...stage, list: pressed.list });
    case 'back':
      return stage.kind === 'what' ? leave(state) : show({ kind: 'what', list: LIST_TOP });
    case 'keys':
      return asksForKeys(state);
    case 'none':
      return stay(state);
  }
}

/** The marked line is taken. */
function chosen(
  state: MeasureState,
  stage: At<'what' | 'again'>,
  bench: Bench,
): Outcome<MeasureState> {
  if (stage.kind === 'again') {
    const { row } = stage;
    return stage.list.row === 0
      ? show({ kind: 'reading', of: { kind: 'length', row }, read: [], field: EMPTY })
      : show(answered(answerToDropping(row, bench), stage));
  }
  const choice = choicesOf(bench)[stage.list.row];
  if (choice === undefined) return stay(state);
  if (choice.kind === 'length' && choice.row.measured !== undefined) {
    return show({ kind: 'again', row: choice.row, list: LIST_TOP });
  }
  return show({ kind: 'reading', of: choice, read: [], field: EMPTY });
}

/** Enter takes the length over; on an empty line it says that these were all. */
function inReading(state: MeasureState, stage: ReadingStage, { key, bench }: Pressed) {
  const isEmpty = fieldText(stage.field) === '';
  if (key.name === 'page-up' || (key.name === 'backspace' && isEmpty)) return oneBack(stage);
  if (key.name === 'character' && key.text === '?') return asksForKeys(state);
  if (key.name === 'enter' || key.name === 'page-down') {
    return isEmpty ? allRead(state, stage, bench) : oneMore(state, stage, bench);
  }
  const field = typeInto(stage.field, key);
  return field === undefined ? stay(state) : show({ ...stage, field });
}

function oneBack(stage: ReadingStage): Outcome<MeasureState> {
  return stage.read.length === 0
    ? show({ kind: 'what', list: LIST_TOP })
    : show({ ...stage, read: stage.read.slice(0, -1), field: EMPTY });
}

function oneMore(state: MeasureState, stage: ReadingStage, bench: Bench): Outcome<MeasureState> {
  const reading = typedReading(stage, bench.build);
  if (!reading.ok) return stay(state);
  const more = { ...stage, read: [...stage.read, reading.value], field: EMPTY };
  return more.read.length >= wantedOf(stage.of) ? allRead(state, more, bench) : show(more);
}

function allRead(state: MeasureState, stage: ReadingStage, bench: Bench): Outcome<MeasureState> {
  const answer = answerOf(stage, bench);
  return answer === undefined
    ? stay(state)
    : show(answered(answer, { ...stage, read: wantedOf(stage.of) > 2 ? stage.read : [] }));
}

function answerOf({ of, read }: ReadingStage, bench: Bench): Answer | undefined {
  const [one, other] = read;
  if (one === undefined) return undefined;
  switch (of.kind) {
    case 'length':
      return answerToLength(of.row, read, bench);
    case 'first':
      return answerToFirst(of.cutting, one, bench.build, bench.at.nowMs);
    case 'diagonals': {
      const both: readonly [Mm, Mm] | undefined = other === undefined ? undefined : [one, other];
      return both && answerToDiagonals(of.frame, both, bench);
    }
  }
}

function answered(answer: Answer, from: Stage): AnswerStage {
  return { kind: 'answer', answer, top: 0, from };
}

function inAnswer(state: MeasureState, stage: AnswerStage, { key, bench }: Pressed) {
  const { answer } = stage;
  switch (key.name) {
    case 'space':
    case 'enter':
    case 'page-down':
      return isReadToEnd(stage, bench)
        ? written(state, answer.take)
        : scrolled(state, stage, { key: { name: 'page-down' }, bench });
    case 'backspace':
    case 'left':
    case 'page-up':
      return show(stage.from);
    case 'character':
      if (key.text === '?') return asksForKeys(state);
      return key.text === 'l' && answer.leave !== undefined
        ? written(state, answer.leave.events)
        : stay(state);
    default:
      return scrolled(state, stage, { key, bench });
  }
}

function scrolled(state: MeasureState, stage: AnswerStage, { key, bench }: Pressed) {
  const top = scrollTo(stage.top, key, bodyRoom(stage, bench));
  return top === undefined ? stay(state) : show({ ...stage, top });
}

function asksForKeys(state: MeasureState): Outcome<MeasureState> {
  return { state, asks: [{ kind: 'go', to: 'keys' }] };
}
