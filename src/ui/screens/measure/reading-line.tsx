import { Box } from 'ink';
import { formatLength } from '../../../measure/format-length.js';
import { finer } from '../../../plan/readings.js';
import { wrap } from '../../../text/wrap.js';
import type { Build, Context } from '../../screen.js';
import { textColumns } from '../../widgets/answer.js';
import { AnswerLine, type Told } from '../../widgets/answer-line.js';
import { plainer } from '../../widgets/facts.js';
import { fieldText } from '../../widgets/field.js';
import { Lines } from '../../widgets/lines.js';
import { readWords } from './question-words.js';
import type { ReadingStage } from './state.js';
import { typedReading } from './typed.js';

type ReadingLineProps = {
  readonly stage: ReadingStage;
  readonly build: Build;
  readonly at: Context;
};

/** The line being typed, how it is read or what is wrong with it, and the readings so far. */
export function ReadingLine({ stage, build, at }: ReadingLineProps) {
  const soFar = plainer(at.ascii)(readWords(stage, build));
  return (
    <Box flexDirection="column" flexShrink={0}>
      <AnswerLine field={stage.field} told={told(stage, build)} at={at} />
      <Lines lines={wrap(soFar, textColumns(at))} />
    </Box>
  );
}

function told(stage: ReadingStage, build: Build): Told {
  if (fieldText(stage.field) === '') return { read: '' };
  const reading = typedReading(stage, build);
  return reading.ok
    ? { read: formatLength(reading.value, finer(build.plan.display)) }
    : { wrong: `! ${reading.problem} ${reading.hint}` };
}
