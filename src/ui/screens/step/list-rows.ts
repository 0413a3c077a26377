import { count } from '../../../text/plural.js';
import { cut, padEnd, padStart } from '../../../text/wrap.js';
import { isDone, tallyOf } from '../../../workbook/next-step.js';
import type { Build, Context } from '../../screen.js';
import type { ListRoom } from '../../widgets/list.js';

/** Every step in a line: done or not, its number and title, how far its count is. */
export function listRows({ plan, progress }: Build, width: number): readonly string[] {
  const digits = String(plan.steps.length).length;
  return plan.steps.map((step, at) => {
    const tally = tallyOf(step, progress);
    const begun = tally !== undefined && tally.done > 0 && !isDone(step, progress);
    const end = begun ? `${tally.done} of ${count(tally.count, tally.of)}` : '';
    const start = `${isDone(step, progress) ? '[x]' : '[ ]'} ${padStart(String(at + 1), digits)} `;
    const room = width - start.length - end.length - 1;
    return `${start}${padEnd(cut(step.title, room), room)} ${end}`.trimEnd();
  });
}

/** Above the list a heading, below it where one is. */
export function listRoom({ plan }: Build, { size }: Context): ListRoom {
  return { count: plan.steps.length, height: Math.max(1, size.rows - 3) };
}
