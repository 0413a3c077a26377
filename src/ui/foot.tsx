import { Box, Text } from 'ink';
import { hintRows } from './hint-rows.js';
import type { KeyHint } from './screen.js';

type FootProps = { readonly hints: readonly KeyHint[]; readonly width: number };

/** Every key that works now, at the bottom of the frame. */
export function Foot({ hints, width }: FootProps) {
  return (
    <Box flexDirection="column" height={2} flexShrink={0} marginTop={1}>
      {hintRows(hints, width).map(row => (
        <Box key={row.map(({ key }) => key).join(' ')} columnGap={width < 100 ? 2 : 3}>
          {row.map(({ key, does }) => (
            <Text key={`${key} ${does}`} wrap="truncate">
              <Text bold>{`[${key}]`}</Text>
              {` ${does}`}
            </Text>
          ))}
        </Box>
      ))}
    </Box>
  );
}
