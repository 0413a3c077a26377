import { Box, Text } from 'ink';
import { wrap } from '../../../text/wrap.js';
import type { Build, Context } from '../../screen.js';
import { ACCENT } from '../../theme.js';
import { plainer } from '../../widgets/facts.js';
import { FieldView } from '../../widgets/field-view.js';
import { Lines } from '../../widgets/lines.js';
import { textColumns } from './room.js';
import { type LineStage, readLine } from './typed-line.js';

type LengthLineProps = {
  readonly stage: LineStage;
  readonly build: Build;
  readonly at: Context;
};

/** The line being typed, and how it is read or what is wrong with it. */
export function LengthLine({ stage, build, at }: LengthLineProps) {
  const width = textColumns(at);
  const read = readLine(stage, build);
  const plain = plainer(at.ascii);
  const isEmpty = stage.field.before === '' && stage.field.after === '';
  return (
    <Box flexDirection="column" flexShrink={0}>
      <FieldView field={stage.field} width={width} />
      {read.ok ? (
        <Lines lines={[isEmpty ? '' : `  ${plain(read.value)}`]} />
      ) : (
        <Text bold color={ACCENT.heed} wrap="truncate">
          {wrap(plain(isEmpty ? read.hint : `! ${read.problem} ${read.hint}`), width).join('\n')}
        </Text>
      )}
    </Box>
  );
}
