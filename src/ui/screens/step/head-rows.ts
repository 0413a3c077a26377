import { textWidth } from '../../../text/width.js';
import { padEnd, wrap } from '../../../text/wrap.js';
import { plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import { WHO } from './phase-words.js';
import type { Work } from './work-rows.js';

const LONGEST_TITLE = 2;

/** The title at the left, who does it at the right. */
export function headRows({ step, build, at }: Work, columns: number): readonly Row[] {
  const who = build.plan.time.people === 1 ? '' : WHO[step.who];
  const done = build.progress.done.has(step.id) ? 'DONE: ' : '';
  const title = `${done}${plainer(at.ascii)(step.title)}`;
  const lines = wrap(title, columns - textWidth(who) - 2).slice(0, LONGEST_TITLE);
  return lines.map((line, number) => ({
    text: number === 0 ? `${padEnd(line, columns - textWidth(who))}${who}` : line,
    tone: 'strong',
  }));
}
