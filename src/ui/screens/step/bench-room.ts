import type { ScrollRoom } from '../../widgets/scroll.js';
import { briefingRoom } from './briefing-rows.js';
import { nextMove } from './next-move.js';
import type { StepBench } from './state.js';
import { workRoom } from './work-layout.js';

/** What up and down scroll: what is read aloud, or the step. */
export function benchRoom({ build, step, at }: StepBench): ScrollRoom & { readonly top: number } {
  const move = nextMove(step, build, at.nowMs);
  const work = { step, build, at };
  return move.kind === 'brief' ? { ...briefingRoom(move, work), top: 0 } : workRoom(work);
}
