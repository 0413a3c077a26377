import { Box, Text } from 'ink';
import { memo } from 'react';
import type { SetPicture } from '../pictures.js';
import { ACCENT } from '../theme.js';

type PictureProps = { readonly picture: SetPicture };

/** A drawing set in cells; what is being added is bright. Told in words to those who listen. */
export const Picture = memo(function PictureOf({ picture }: PictureProps) {
  const lines = picture.lines.map((line, number) => ({ runs: runsOf(line), number }));
  return (
    <Box flexDirection="column" flexShrink={0} aria-label={picture.inWords}>
      <Text wrap="truncate">
        {lines.map(({ runs, number }) => (
          <Text key={number}>
            {number === 0 ? '' : '\n'}
            {runs.map(({ from, text, bright }) =>
              bright ? (
                <Text key={from} bold color={ACCENT.now}>
                  {text}
                </Text>
              ) : (
                text
              ),
            )}
          </Text>
        ))}
      </Text>
    </Box>
  );
});

type Run = { readonly from: number; readonly text: string; readonly bright: boolean };

function runsOf({ text, bright }: SetPicture['lines'][number]): readonly Run[] {
  const signs = Array.from(text === '' ? ' ' : text);
  const edges = [0, ...bright.flat(), signs.length];
  return edges.slice(0, -1).flatMap((from, at) => {
    const to = edges[at + 1] ?? from;
    if (to <= from) return [];
    return [{ from, text: signs.slice(from, to).join(''), bright: at % 2 === 1 }];
  });
}
