import { Box, Text } from 'ink';
import { wrap } from '../../text/wrap.js';
import type { Context } from '../screen.js';
import { ACCENT } from '../theme.js';
import { textColumns } from './answer.js';
import { plainer } from './facts.js';
import type { Field } from './field.js';
import { FieldView } from './field-view.js';
import { Lines } from './lines.js';

/** How a typed line is read, or what is to be told instead of it. */
export type Told = { readonly read: string } | { readonly wrong: string };

type AnswerLineProps = { readonly field: Field; readonly told: Told; readonly at: Context };

/** A line being typed, and how it is read or what is wrong with it. */
export function AnswerLine({ field, told, at }: AnswerLineProps) {
  const width = textColumns(at);
  const plain = plainer(at.ascii);
  return (
    <Box flexDirection="column" flexShrink={0}>
      <FieldView field={field} width={width} />
      {'read' in told ? (
        <Lines lines={[told.read === '' ? '' : `  ${plain(told.read)}`]} />
      ) : (
        <Text bold color={ACCENT.heed} wrap="truncate">
          {wrap(plain(told.wrong), width).join('\n')}
        </Text>
      )}
    </Box>
  );
}
