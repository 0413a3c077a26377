import { formatMinutes } from '../../../measure/duration.js';
import { hanging } from '../../../text/page-lines.js';
import { timerWords } from '../../../workbook/timers.js';
import { plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import { timerById, wasStarted } from './next-move.js';
import type { Work } from './work-rows.js';

/** Timers of this step: still to start, running, up. */
export function timerRows({ step, build, at }: Work, columns: number): readonly Row[] {
  return step.timers.flatMap(timer => {
    const running = timerById(timer.id, build);
    const stopped = wasStarted(timer, build)
      ? 'stopped'
      : `${formatMinutes(timer.minutes)}, not started`;
    const words = running === undefined ? stopped : timerWords(running, at.nowMs);
    const text = plainer(at.ascii)(`${timer.name}: ${words}`);
    return hanging('Timer  ', text, columns).map(
      (line): Row => (running === undefined ? { text: line } : { text: line, tone: 'heed' }),
    );
  });
}
