import { Box } from 'ink';
import { wrap } from '../../../text/wrap.js';
import type { Context } from '../../screen.js';
import { Lines } from '../../widgets/lines.js';
import { questionWords } from './question-words.js';
import { textColumns } from './room.js';
import type { Stage } from './state.js';

/** What is asked, with how to answer below it. */
export function Question({ stage, at }: { readonly stage: Stage; readonly at: Context }) {
  const width = textColumns(at);
  const [asked = '', ...more] = questionWords(stage);
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Lines lines={wrap(asked, width)} bold />
      <Lines lines={[...more.flatMap(text => wrap(text, width)), '']} />
    </Box>
  );
}
