import { Box, Text } from 'ink';
import { formatLength } from '../../../measure/format-length.js';
import { finer } from '../../../plan/readings.js';
import { wrap } from '../../../text/wrap.js';
import type { Build, Context } from '../../screen.js';
import { ACCENT } from '../../theme.js';
import { plainer } from '../../widgets/facts.js';
import { fieldText } from '../../widgets/field.js';
import { FieldView } from '../../widgets/field-view.js';
import { Lines } from '../../widgets/lines.js';
import { questionWords, readWords, textColumns } from './room.js';
import type { ReadingStage, Stage } from './state.js';
import { typedReading } from './typed.js';

type StageProps<S extends Stage> = {
  readonly stage: S;
  readonly build: Build;
  readonly at: Context;
};

/** What is asked, and how to measure it. */
export function Question({ stage, build, at }: StageProps<Stage>) {
  const width = textColumns(at);
  const [asked = '', ...more] = questionWords(stage, build);
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Lines lines={wrap(asked, width)} bold />
      <Lines lines={[...more.flatMap(text => wrap(text, width)), '']} />
    </Box>
  );
}

/** The line being typed, how it is read or what is wrong with it, and the readings so far. */
export function ReadingLine({ stage, build, at }: StageProps<ReadingStage>) {
  const width = textColumns(at);
  const isEmpty = fieldText(stage.field) === '';
  const reading = typedReading(stage, build);
  const plain = plainer(at.ascii);
  const said = isEmpty
    ? ''
    : reading.ok
      ? formatLength(reading.value, finer(build.plan.display))
      : '';
  const wrong = isEmpty || reading.ok ? '' : `! ${reading.problem} ${reading.hint}`;
  return (
    <Box flexDirection="column" flexShrink={0}>
      <FieldView field={stage.field} width={width} />
      {wrong === '' ? (
        <Lines lines={[said === '' ? '' : `  ${said}`]} />
      ) : (
        <Text bold color={ACCENT.heed} wrap="truncate">
          {wrap(plain(wrong), width).join('\n')}
        </Text>
      )}
      <Lines lines={wrap(plain(readWords(stage, build)), width)} />
    </Box>
  );
}
