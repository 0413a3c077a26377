import { formatMinutes } from '../../../measure/duration.js';
import { hanging } from '../../../text/page-lines.js';
import { wrap } from '../../../text/wrap.js';
import { timerWords } from '../../../workbook/timers.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { timerById } from './next-move.js';
import type { Work } from './work-rows.js';

/** The timers of a step, numbered, with how long and why; a question where one runs already. */
export function timerPaneRows(
  { step, build, at }: Work,
  again: string | undefined,
): readonly Row[] {
  const plain = plainer(at.ascii);
  const { columns } = at.size;
  return step.timers.flatMap((timer, number): readonly Row[] => {
    const running = timerById(timer.id, build);
    const state =
      running === undefined ? formatMinutes(timer.minutes) : timerWords(running, at.nowMs);
    const detail = [`Then: ${timer.then}`, `So long because: ${timer.because}.`];
    const question: readonly Row[] =
      again === timer.id
        ? wrap(`It runs already. Press ${number + 1} again to start it afresh.`, columns).map(
            (text): Row => ({ text, tone: 'heed' }),
          )
        : [];
    return [
      { text: plain(`${number + 1}  ${timer.name}: ${state}`), tone: 'strong' },
      ...plainRows(detail.flatMap(text => hanging('   ', plain(text), columns))),
      ...question,
      BLANK,
    ];
  });
}
