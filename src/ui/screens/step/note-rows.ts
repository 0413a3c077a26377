import { hanging } from '../../../text/page-lines.js';
import { cut } from '../../../text/wrap.js';
import { clockWords } from '../../../workbook/clock-words.js';
import { plainer } from '../../widgets/facts.js';
import { NOTE_ROWS } from '../../widgets/note-line.js';
import { BLANK, plainRows, type Row } from '../../widgets/rows.js';
import { notesOf } from './said-blocks.js';
import type { Work } from './work-rows.js';

/** Above the line of a new note: what was noted about the step before, the newest where not all has room. */
export function noteHeadRows(work: Work): readonly Row[] {
  const { step, at } = work;
  const { columns, rows } = at.size;
  const plain = plainer(at.ascii);
  const heading: Row = {
    text: cut(plain(`A note about this step: ${step.title}`), columns),
    tone: 'strong',
  };
  const before = notesOf(work).flatMap(({ text, atMs }) =>
    hanging('- ', plain(`${text} (${clockWords(atMs, at.nowMs)})`), columns),
  );
  const room = Math.max(1, rows - NOTE_ROWS - 3);
  if (before.length === 0) return [heading, BLANK];
  return [heading, BLANK, ...plainRows(before.slice(-room)), BLANK];
}
