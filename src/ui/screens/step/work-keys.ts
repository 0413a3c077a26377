import { tallyOf } from '../../../workbook/next-step.js';
import { nextToTakeBack } from '../../../workbook/taken-back.js';
import type { Key, Outcome } from '../../screen.js';
import { scrollTo } from '../../widgets/scroll.js';
import { benchRoom } from './bench-room.js';
import { anotherHelper, pressBriefing } from './brief-keys.js';
import { nextMove, openChecks } from './next-move.js';
import { timersAt } from './open-in-glue-up.js';
import { picturePane } from './picture-frame.js';
import { stepBeside } from './shown-step.js';
import {
  asking,
  type Bench,
  finish,
  recording,
  type StepBench,
  type StepState,
  show,
  startTimer,
  takeBack,
  toStep,
  withPane,
} from './state.js';

/** A glove that bounces must not count a piece of the step that has just come up. */
const BOUNCE_MS = 250;

/** A key at the step itself. */
export function pressWork(state: StepState, key: Key, bench: StepBench): Outcome<StepState> {
  switch (key.name) {
    case 'space':
    case 'enter':
    case 'page-down':
      return advance(state, bench);
    case 'backspace':
    case 'page-up':
    case 'left':
      return look(state, -1, bench);
    case 'right':
      return look(state, 1, bench);
    case 'up':
    case 'down':
    case 'home':
    case 'end': {
      const room = benchRoom(bench);
      const top = scrollTo(topOf(state) ?? room.top, key, room);
      return top === undefined ? show(state) : withPane(state, { kind: 'work', top });
    }
    case 'character':
      return pressSign(state, key.text, bench);
    default:
      return pressAnywhere(state, key, bench);
  }
}

/** A key where every step is done: nothing to do but look back or put things away. */
export function pressFinished(state: StepState, key: Key, bench: Bench): Outcome<StepState> {
  const { build } = bench;
  switch (key.name) {
    case 'backspace':
    case 'page-up':
    case 'left':
      return toStep(state, build.plan.steps.at(-1));
    case 'space':
    case 'enter':
    case 'page-down':
      return asking(state, [{ kind: 'go', to: 'pause' }]);
    default:
      return pressAnywhere(state, key, bench);
  }
}

/** Keys that work with and without a step. */
function pressAnywhere(state: StepState, key: Key, { build, step }: Bench): Outcome<StepState> {
  if (key.name === 'escape') return asking(state, [{ kind: 'leave' }]);
  if (key.name !== 'character') return show(state);
  switch (key.text) {
    case 'u':
      return nextToTakeBack(build.workbook.events) === undefined
        ? show(state)
        : withPane(state, { kind: 'take-back' });
    case 'l': {
      const row = step === undefined ? 0 : build.plan.steps.indexOf(step);
      const list = { row, top: Math.max(0, row - 3) };
      return withPane(state, { kind: 'list', list, typed: '' });
    }
    case 'b':
      return asking(state, [{ kind: 'go', to: 'plan' }]);
    case 'p':
      return asking(state, [{ kind: 'go', to: 'pause' }]);
    case 'm':
      return asking(state, [{ kind: 'go', to: 'mistake' }]);
    case 's':
      return asking(state, [{ kind: 'go', to: 'measure' }]);
    case 't':
      return asking(state, [{ kind: 'go', to: 'timers' }]);
    case '?':
      return asking(state, [{ kind: 'go', to: 'keys' }]);
    default:
      return show(state);
  }
}

function topOf({ pane }: StepState): number | undefined {
  return pane.kind === 'work' ? pane.top : undefined;
}

/** The big key: whatever comes next at this step. */
function advance(state: StepState, bench: StepBench): Outcome<StepState> {
  const { build, step, at } = bench;
  if (at.nowMs - state.movedAtMs < BOUNCE_MS && at.nowMs >= state.movedAtMs) return show(state);
  const move = nextMove(step, build, at.nowMs);
  const atMs = at.nowMs;
  switch (move.kind) {
    case 'brief':
      return pressBriefing(state, move, bench);
    case 'count':
      return recording(state, [{ kind: 'piece-done', atMs, step: step.id, count: 1 }]);
    case 'check':
      return recording(state, [{ kind: 'check-made', atMs, step: step.id, check: move.check }]);
    case 'start-timer':
      return startTimer({ ...state, movedAtMs: atMs }, move.timer, bench);
    case 'measure-first':
      return asking(state, [{ kind: 'go', to: 'measure' }]);
    case 'wait':
      return move.begins ? asking(state, [{ kind: 'go', to: 'timers' }]) : show(state);
    case 'tell-day':
      return asking(state, [{ kind: 'go', to: 'day' }]);
    case 'not-today':
      return asking(state, [{ kind: 'go', to: 'timers' }]);
    case 'finish':
      return finish(state, step, { build, nowMs: atMs });
    case 'go-on':
      return look({ ...state, movedAtMs: atMs }, 1, bench);
  }
}

/** The step before or after, done or not; past the last one is the end of the build, if it is. */
function look(state: StepState, by: 1 | -1, { build, step }: StepBench): Outcome<StepState> {
  const beside = stepBeside(step, by, build);
  if (beside !== undefined) return toStep(state, beside);
  if (by === -1) return show(state);
  const open = build.plan.steps.find(({ id }) => !build.progress.done.has(id));
  if (open?.id === step.id) return show(state);
  return toStep(state, open);
}

function pressSign(state: StepState, sign: string, bench: StepBench): Outcome<StepState> {
  const { build, step } = bench;
  switch (sign) {
    case '+':
    case '=':
      return countOne(state, bench);
    case '-':
      return uncount(state, bench);
    case 'w':
      return withPane(state, { kind: 'why', top: 0 });
    case 'c':
      return withPane(state, { kind: 'cautions', top: 0 });
    case 'h':
      return withPane(state, { kind: 'helper', top: 0 });
    case 'g':
      return withPane(state, { kind: 'words', top: 0 });
    case 'v':
      return withPane(state, picturePane(bench));
    case 't':
      return timersAt(step, build).length === 0
        ? pressAnywhere(state, { name: 'character', text: sign }, bench)
        : withPane(state, { kind: 'timers' });
    case 'y':
      return step.day === undefined ? show(state) : asking(state, [{ kind: 'go', to: 'day' }]);
    case 'n':
      return withPane(state, { kind: 'note', text: '' });
    case 'f':
      return anotherHelper(state, bench);
    case 'd':
      return build.progress.done.has(step.id)
        ? show(state)
        : withPane(state, { kind: 'done-anyway' });
    default:
      return /^[1-9]$/.test(sign)
        ? tick(state, Number(sign) - 1, bench)
        : pressAnywhere(state, { name: 'character', text: sign }, bench);
  }
}

function countOne(state: StepState, { build, step, at }: StepBench): Outcome<StepState> {
  const tally = tallyOf(step, build.progress);
  if (tally === undefined || tally.done >= tally.count) return show(state);
  if (nextMove(step, build, at.nowMs).kind === 'brief') return show(state);
  return recording(state, [{ kind: 'piece-done', atMs: at.nowMs, step: step.id, count: 1 }]);
}

/** One piece back at once where that is the last thing done; anything else is asked about first. */
function uncount(state: StepState, { build, step, at }: StepBench): Outcome<StepState> {
  if (step.tally === undefined) return show(state);
  const last = nextToTakeBack(build.workbook.events);
  if (last === undefined) return show(state);
  const own = last.kind === 'piece-done' && last.step === step.id;
  return own ? takeBack(state, { build, step, at }) : withPane(state, { kind: 'take-back' });
}

function tick(state: StepState, check: number, { build, step, at }: StepBench): Outcome<StepState> {
  const move = nextMove(step, build, at.nowMs).kind;
  const open = openChecks(step, build).includes(check);
  if (!open || move === 'brief' || move === 'go-on') return show(state);
  return recording(state, [{ kind: 'check-made', atMs: at.nowMs, step: step.id, check }]);
}
