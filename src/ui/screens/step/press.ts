import type { Context, Key, Outcome } from '../../screen.js';
import { pressList, pressNote, pressPicture, pressTimers } from './pane-keys.js';
import { pressReading } from './reading-keys.js';
import {
  type Bench,
  finish,
  type StepBench,
  type StepState,
  show,
  shownStep,
  takeBack,
  WORK,
  withPane,
} from './state.js';
import { pressFinished, pressWork } from './work-keys.js';

/** What a key does to the step screen. */
export function press(state: StepState, key: Key, at: Context): Outcome<StepState> {
  const { build } = at;
  if (build === undefined) return { state, asks: [{ kind: 'leave' }] };
  const step = shownStep(state, build);
  const bench = { build, step, at };
  switch (state.pane.kind) {
    case 'take-back':
      return pressTakeBack(state, key, bench);
    case 'list':
      return pressList(state, state.pane, key, bench);
    case 'work':
      return step === undefined
        ? pressFinished(state, key, bench)
        : pressWork(state, key, { build, step, at });
    default:
      return step === undefined ? withPane(state, WORK) : onStep(state, key, { build, step, at });
  }
}

function onStep(state: StepState, key: Key, bench: StepBench): Outcome<StepState> {
  const { pane } = state;
  switch (pane.kind) {
    case 'why':
    case 'cautions':
    case 'helper':
    case 'words':
      return pressReading(state, pane, key, bench);
    case 'picture':
      return pressPicture(state, pane, key, bench);
    case 'timers':
      return pressTimers(state, pane, key, bench);
    case 'note':
      return pressNote(state, pane, key, bench);
    case 'done-anyway':
      return pressDoneAnyway(state, key, bench);
    default:
      return show(state);
  }
}

function pressTakeBack(state: StepState, key: Key, bench: Bench): Outcome<StepState> {
  const meant = key.name === 'enter' || (key.name === 'character' && key.text === 'u');
  return meant ? takeBack(state, bench) : withPane(state, WORK);
}

function pressDoneAnyway(
  state: StepState,
  key: Key,
  { build, step, at }: StepBench,
): Outcome<StepState> {
  const meant = key.name === 'enter' || (key.name === 'character' && key.text === 'd');
  if (!meant) return withPane(state, WORK);
  return finish(state, step, { build, nowMs: at.nowMs });
}
