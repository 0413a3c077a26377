import type { Build, Context } from '../../screen.js';
import { AnswerLine } from '../../widgets/answer-line.js';
import { fieldText } from '../../widgets/field.js';
import { type LineStage, readLine } from './typed-line.js';

type LengthLineProps = {
  readonly stage: LineStage;
  readonly build: Build;
  readonly at: Context;
};

/** The line being typed, and how it is read or what is wrong with it. */
export function LengthLine({ stage, build, at }: LengthLineProps) {
  const read = readLine(stage, build);
  const isEmpty = fieldText(stage.field) === '';
  if (read.ok) {
    return <AnswerLine field={stage.field} told={{ read: isEmpty ? '' : read.value }} at={at} />;
  }
  const wrong = isEmpty ? read.hint : `! ${read.problem} ${read.hint}`;
  return <AnswerLine field={stage.field} told={{ wrong }} at={at} />;
}
