import { Box } from 'ink';
import type { Build, Context } from '../../screen.js';
import type { ListState } from '../../widgets/list.js';
import { ListView } from '../../widgets/list-view.js';
import { Rows } from '../../widgets/rows.js';
import { listRoom, listRows } from './list-rows.js';

type ListProps = { readonly list: ListState; readonly build: Build; readonly at: Context };

/** All steps, to go to one. */
export function ListPane({ list, build, at }: ListProps) {
  const { columns } = at.size;
  const { height } = listRoom(build, at);
  const rows = listRows(build, columns - 2);
  return (
    <Box flexDirection="column">
      <Rows rows={[{ text: 'Which step?', tone: 'strong' }]} width={columns} height={1} />
      <ListView rows={rows} state={list} width={columns} height={height} />
    </Box>
  );
}
