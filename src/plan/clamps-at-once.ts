import { DAY } from '../measure/spans.js';
import type { Plan, Session } from './plan.js';

/** Beside those on glue: a ledger, or what is held while it is screwed, has one at each end; common practice. */
const HELD_BESIDE = 2;

type Hold = { readonly from: number; readonly to: number; readonly clamps: number };

/**
 * Bar clamps that are wanted at once when the work goes as the time plan lays it: panels still in clamps while the
 * next joints are closed, and two that hold work beside. None where no glue is clamped. Without hours that hold the
 * work it is what the step that wants most of them wants alone.
 */
export function clampsAtOnce({ glueUps, glue, time }: Clamped): number {
  const alone = Math.max(0, ...glueUps.map(({ clamps }) => clamps.value));
  if (alone === 0) return 0;
  const holds = glueUps.flatMap(row => holdsOf(row, time.sessions, glue.clampTime.value));
  const most = holds.map(({ from }) =>
    holds.reduce((sum, it) => sum + (it.from <= from && from < it.to ? it.clamps : 0), 0),
  );
  return Math.max(alone, ...most) + HELD_BESIDE;
}

type Clamped = {
  readonly glueUps: readonly Pick<
    Plan['glueUps'][number],
    'step' | 'count' | 'clampsEach' | 'clamps'
  >[];
  readonly glue: Pick<Plan['glue'], 'clampTime'>;
  readonly time: { readonly sessions: readonly Pick<Session, 'turns'>[] };
};

/** Glue-ups spread evenly over the minutes of their step; each has its clamps from its first stroke, laid out ready. */
function holdsOf(
  { step, count, clampsEach }: Clamped['glueUps'][number],
  sessions: Clamped['time']['sessions'],
  clampTime: number,
): readonly Hold[] {
  // Clamps come off between sessions: a day is longer than they stay on.
  const turns = sessions.flatMap(({ turns: own }, at) =>
    own
      .filter(turn => turn.step === step)
      .map(({ from, to }) => ({ from: at * DAY + from, minutes: to - from })),
  );
  const whole = turns.reduce((sum, { minutes }) => sum + minutes, 0);
  const each = whole / count.value;
  let before = 0;
  return turns.flatMap(({ from, minutes }) => {
    const [first, last] = [
      Math.floor(before / each + 1e-9),
      Math.floor((before + minutes) / each + 1e-9),
    ];
    const holds = Array.from({ length: last - first }, (_, at): Hold => {
      const closed = from + (first + at + 1) * each - before;
      return { from: closed - each, to: closed + clampTime, clamps: clampsEach };
    });
    before += minutes;
    return holds;
  });
}
