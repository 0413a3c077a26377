import { formatMinutes } from '../../../measure/duration.js';
import { hanging } from '../../../text/page-lines.js';
import { count } from '../../../text/plural.js';
import { wrap } from '../../../text/wrap.js';
import { timerWords } from '../../../workbook/timers.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { timerById } from './next-move.js';
import { openInGlueUp, timersAt } from './open-in-glue-up.js';
import type { Work } from './work-rows.js';

/** The timers of a step, numbered, with how long and why; a question where one runs already or comes too early. */
export function timerPaneRows(
  { step, build, at }: Work,
  asked: string | undefined,
): readonly Row[] {
  const plain = plainer(at.ascii);
  const { columns } = at.size;
  return timersAt(step, build).flatMap((timer, number): readonly Row[] => {
    const running = timerById(timer.id, build);
    const state =
      running === undefined ? formatMinutes(timer.minutes) : timerWords(running, at.nowMs);
    const detail = [`Then: ${timer.then}`, `So long because: ${timer.because}.`];
    const question: readonly Row[] =
      asked === timer.id
        ? wrap(doubtWords(number + 1, { step, build, at }), columns).map(
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

function doubtWords(number: number, { step, build }: Work): string {
  const timer = timersAt(step, build)[number - 1];
  if (timer !== undefined && timerById(timer.id, build) !== undefined)
    return `It runs already. Press ${number} again to start it afresh.`;
  const open = openInGlueUp(step, build);
  const left = count(open, step.tally?.of ?? 'piece');
  return `${left} of this glue-up ${open === 1 ? 'is' : 'are'} not counted yet. Press ${number} again to start it anyway.`;
}
