import { Box, Text } from 'ink';
import { toAscii } from '../../text/safe-text.js';
import { cut } from '../../text/wrap.js';
import { marks, useLook } from '../theme.js';
import { type ListState, listAt, listPosition } from './list.js';

type ListViewProps = {
  readonly rows: readonly string[];
  readonly state: ListState;
  readonly width: number;
  readonly height: number;
};

/** A window on a long list: one row a line, the marked one with `>`, and where one is in it. */
export function ListView({ rows, state, width, height }: ListViewProps) {
  const { ascii } = useLook();
  const { pointer } = marks(ascii);
  const room = { count: rows.length, height };
  const position = listPosition(state, room);
  // Whoever made the list may not have known the window; the marked row is always seen.
  const { top } = listAt(state.row, state, room);
  const window = rows
    .map((text, number) => ({ text, number, marked: number === state.row }))
    .slice(top, top + height);
  return (
    <Box flexDirection="column" width={width} flexShrink={0}>
      {window.map(({ text, number, marked }) => (
        <Text key={number} bold={marked} wrap="truncate">
          {`${marked ? pointer : ' '} ${cut(ascii ? toAscii(text) : text, width - 2)}`}
        </Text>
      ))}
      {position === '' ? null : <Text wrap="truncate">{`  ${position}`}</Text>}
    </Box>
  );
}
