import { hanging } from '../../../text/page-lines.js';
import { isDone } from '../../../workbook/next-step.js';
import type { Row } from '../../widgets/rows.js';
import { openBeforeWords, whyShortFirst } from './open-before-words.js';
import type { Work } from './work-rows.js';

/** Steps that were passed over: somebody who jumped ahead is told before anything is cut or glued. */
export function openBeforeRows({ step, build }: Work, columns: number): readonly Row[] {
  const open = isDone(step, build.progress) ? '' : openBeforeWords(step, build);
  if (open === '') return [];
  const words = `${open}. ${whyShortFirst(step, build)}`.trimEnd();
  return hanging('Open before this: ', words, columns).map((text): Row => ({ text, tone: 'heed' }));
}
