import type { Outcome } from '../../screen.js';
import { isAtEnd } from '../../widgets/scroll.js';
import { heardEvents } from './briefing-pages.js';
import { briefingRoom, readOn } from './briefing-rows.js';
import { type Move, nextMove } from './next-move.js';
import { arrival } from './shown-step.js';
import { recording, type StepBench, type StepState, show, withPane } from './state.js';

type Briefing = Extract<Move, { readonly kind: 'brief' }>;

/** The big key at something that is read aloud: read on, and at the end signed off. */
export function pressBriefing(
  state: StepState,
  move: Briefing,
  { build, step, at }: StepBench,
): Outcome<StepState> {
  const room = briefingRoom(move, { step, build, at });
  const top = state.pane.kind === 'work' ? (state.pane.top ?? 0) : 0;
  const moved = { ...state, movedAtMs: at.nowMs };
  return isAtEnd(top, room)
    ? recording(moved, [...arrival(step, build, at.nowMs), ...heardEvents(move.page, at.nowMs)])
    : withPane(moved, { kind: 'work', top: readOn(top, room) });
}

/** To somebody who was not there nothing counts as told; one undo brings it back. */
export function anotherHelper(
  state: StepState,
  { build, step, at }: StepBench,
): Outcome<StepState> {
  const move = nextMove(step, build, at.nowMs);
  if (move.kind !== 'brief' || move.page.kind !== 'refresh') return show(state);
  return recording(state, [{ kind: 'helper-changed', atMs: at.nowMs }]);
}
