import { closer, nextSide, type Sight, turned } from '../../pictures.js';
import type { Build, Key, Outcome } from '../../screen.js';
import { listAt, moveList } from '../../widgets/list.js';
import { noteText } from '../../widgets/note-line.js';
import { listRoom } from './list-rows.js';
import { timerById, wasStarted } from './next-move.js';
import { isTooEarly, openTimeDue, timersAt } from './open-in-glue-up.js';
import { closes, isNext } from './pane-signs.js';
import {
  asking,
  type Bench,
  type Pane,
  recording,
  type StepBench,
  type StepState,
  show,
  startTimer,
  toStep,
  WORK,
  withPane,
} from './state.js';
import { subjectOf } from './subject.js';

type PaneOf<Kind extends Pane['kind']> = Extract<Pane, { readonly kind: Kind }>;

/** The picture over the whole screen, to be turned. */
export function pressPicture(
  state: StepState,
  pane: PaneOf<'picture'>,
  key: Key,
  { build, step }: StepBench,
): Outcome<StepState> {
  const look = (sight: Sight) => withPane(state, { kind: 'picture', ...sight });
  if (key.name === 'right') return look(turned(pane, 1));
  if (key.name === 'left') return look(turned(pane, -1));
  if (key.name === 'character' && key.text === 'v') return look(nextSide(pane));
  if (key.name === 'character' && key.text === 'z') {
    return look(closer(pane, subjectOf(step, build.plan)));
  }
  return closes(key) || key.name === 'page-down' || key.name === 'page-up'
    ? withPane(state, WORK)
    : show(state);
}

/** Timers of this step: started by number; one that runs, or comes too early, only when its number is pressed twice. */
export function pressTimers(
  state: StepState,
  pane: PaneOf<'timers'>,
  key: Key,
  { build, step, at }: StepBench,
): Outcome<StepState> {
  if (key.name === 'escape' || key.name === 'backspace') return withPane(state, WORK);
  if (key.name === 'character' && key.text === 't') {
    return asking({ ...state, pane: WORK }, [{ kind: 'go', to: 'timers' }]);
  }
  const timers = timersAt(step, build);
  const due = openTimeDue(step, build) ?? step.timers.find(it => !wasStarted(it, build));
  const named = key.name === 'character' ? timers[Number(key.text) - 1] : undefined;
  const timer = isNext(key) ? due : named;
  if (timer === undefined) return isNext(key) ? withPane(state, WORK) : show(state);
  const doubtful = timerById(timer.id, build) !== undefined || isTooEarly(timer, step, build);
  const sure = pane.asked === timer.id && !isNext(key);
  if (doubtful && !sure) return withPane(state, { ...pane, asked: timer.id });
  return startTimer(state, timer, { step, build, at });
}

/** A line about this step; an empty one is no note. */
export function pressNote(
  state: StepState,
  pane: PaneOf<'note'>,
  key: Key,
  { step, at }: StepBench,
): Outcome<StepState> {
  if (key.name === 'typed') return withPane(state, { ...pane, text: noteText(key.text) });
  if (key.name === 'escape') return withPane(state, WORK);
  if (key.name !== 'enter') return show(state);
  const text = pane.text.trim();
  if (text === '') return withPane(state, WORK);
  return recording(state, [{ kind: 'note-written', atMs: at.nowMs, step: step.id, text }]);
}

/** All steps: moved in, or a number typed; enter shows the marked one. */
export function pressList(
  state: StepState,
  pane: PaneOf<'list'>,
  key: Key,
  { build, at }: Bench,
): Outcome<StepState> {
  if (key.name === 'escape' || key.name === 'backspace') return withPane(state, WORK);
  if (key.name === 'enter' || key.name === 'space') {
    return toStep(state, build.plan.steps[pane.list.row]);
  }
  if (key.name === 'character' && /^\d$/.test(key.text)) {
    return withPane(state, typedNumber(pane, key.text, build, at));
  }
  const list = moveList(pane.list, key, listRoom(build, at));
  return list === undefined ? show(state) : withPane(state, { kind: 'list', list, typed: '' });
}

/** `1` goes to step 1, `12` to step 12; a digit that leads past the end begins a new number. */
function typedNumber(
  pane: PaneOf<'list'>,
  digit: string,
  build: Build,
  at: StepBench['at'],
): PaneOf<'list'> {
  const longer = pane.typed + digit;
  const typed = Number(longer) <= build.plan.steps.length ? longer : digit;
  const number = Number(typed);
  if (number < 1 || number > build.plan.steps.length) return { ...pane, typed: '' };
  return { kind: 'list', list: listAt(number - 1, pane.list, listRoom(build, at)), typed };
}
