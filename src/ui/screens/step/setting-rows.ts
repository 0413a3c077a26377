import { settingsNow } from '../../../plan/cut-step-now.js';
import { toldToday } from '../../../plan/told-day.js';
import { benchOf } from '../../bench-of.js';
import { factLines, plainer } from '../../widgets/facts.js';
import { plainRows, type Row } from '../../widgets/rows.js';
import type { Work } from './work-rows.js';

/**
 * The settings of a step as rows, by the boards as they are now. What is large already is not said twice, and what
 * a day has to be like only where nobody told it in this session: then the verdict stands there.
 */
export function settingRows({ step, build, at }: Work, columns: number): readonly Row[] {
  const plain = plainer(at.ascii);
  const told = step.day && toldToday(build.progress.days, step.day, at.nowMs);
  const shown = settingsNow(step, benchOf(build))
    .filter(({ text, glueUp }) => text !== step.big?.text && glueUp !== true)
    .filter(({ asks }) => asks === undefined || told?.[asks] === undefined)
    .map(({ name, text }) => ({ name: plain(name), text: plain(text) }));
  return plainRows(factLines(shown, columns));
}
