import { Box } from 'ink';
import { wrap } from '../../text/wrap.js';
import type { Context } from '../screen.js';
import { textColumns } from './answer.js';
import { Lines } from './lines.js';

type QuestionProps = { readonly words: readonly string[]; readonly at: Context };

/** What is asked, with how to answer below it. */
export function Question({ words: [asked = '', ...more], at }: QuestionProps) {
  const width = textColumns(at);
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Lines lines={wrap(asked, width)} bold />
      <Lines lines={[...more.flatMap(text => wrap(text, width)), '']} />
    </Box>
  );
}
