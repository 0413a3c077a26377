import { capital } from '../../../measure/capital.js';
import { count } from '../../../text/plural.js';
import { wrap } from '../../../text/wrap.js';
import { hoursWords } from '../../../workbook/hours-words.js';
import { isUp, timerWords } from '../../../workbook/timers.js';
import type { Build, Context } from '../../screen.js';
import { plainer } from '../../widgets/facts.js';
import { BLANK, type Row } from '../../widgets/rows.js';

/** The end of a build: what was done, how long it took, what still has to wait. */
export function finishedRows(
  { plan, progress }: Build,
  { nowMs, size, ascii }: Context,
): readonly Row[] {
  const plain = plainer(ascii);
  const waiting = progress.timers
    .filter(timer => !isUp(timer, nowMs))
    .map(timer => plain(`${timer.name}: ${timerWords(timer, nowMs)}. ${timer.then}`));
  const words = [
    `${plain(plan.title)}: all ${count(plan.steps.length, 'step')} are done.`,
    `${capital(hoursWords(plan, progress))}.`,
    'b: the care sheet for the owner, and the record of this build for you.',
    ...(waiting.length === 0 ? [] : ['Still to wait for:', ...waiting]),
  ];
  return words.flatMap((text, number): readonly Row[] => [
    ...wrap(text, size.columns).map(
      (line): Row => (number === 0 ? { text: line, tone: 'strong' } : { text: line }),
    ),
    ...(number < 3 ? [BLANK] : []),
  ]);
}
