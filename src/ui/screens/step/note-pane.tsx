import { Box } from 'ink';
import { NoteLine } from '../../widgets/note-line.js';
import { Rows } from '../../widgets/rows.js';
import { noteHeadRows } from './note-rows.js';
import type { Work } from './work-rows.js';

/** The notes of a step, and a line for the next. */
export function NotePane({ text, work }: { readonly text: string; readonly work: Work }) {
  const { columns } = work.at.size;
  const rows = noteHeadRows(work);
  return (
    <Box flexDirection="column" width={columns}>
      <Rows rows={rows} width={columns} height={rows.length} />
      <NoteLine text={text} hint="what you will want to know" width={columns} />
    </Box>
  );
}
