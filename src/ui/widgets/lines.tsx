import { Box, Text } from 'ink';
import { toAscii } from '../../text/safe-text.js';
import { useLook } from '../theme.js';

type LinesProps = {
  readonly lines: readonly string[];
  /** Most lines that there is room for. */
  readonly height?: number;
  readonly bold?: boolean;
  readonly dim?: boolean;
};

/** Lines laid out beforehand, a table or a drawing, set in one piece; in plain ASCII where asked. */
export function Lines({ lines, height, bold = false, dim = false }: LinesProps) {
  const { ascii } = useLook();
  const shown = height === undefined ? lines : lines.slice(0, Math.max(0, height));
  if (shown.length === 0) return null;
  const text = shown.map(line => (line === '' ? ' ' : line)).join('\n');
  return (
    <Box flexShrink={0}>
      <Text bold={bold} dimColor={dim} wrap="truncate">
        {ascii ? toAscii(text) : text}
      </Text>
    </Box>
  );
}
