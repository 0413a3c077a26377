import { settingsNow } from '../../../plan/cut-step-now.js';
import { benchOf } from '../../bench-of.js';
import { factLines, plainer } from '../../widgets/facts.js';
import { plainRows, type Row } from '../../widgets/rows.js';
import type { Work } from './work-rows.js';

/** The settings of a step as rows, by the boards as they are now; what is large already is not said twice. */
export function settingRows({ step, build, at }: Work, columns: number): readonly Row[] {
  const plain = plainer(at.ascii);
  const shown = settingsNow(step, benchOf(build))
    .filter(({ text, glueUp }) => text !== step.big?.text && glueUp !== true)
    .map(({ name, text }) => ({ name: plain(name), text: plain(text) }));
  return plainRows(factLines(shown, columns));
}
