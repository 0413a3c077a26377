import { Box } from 'ink';
import { answerText } from '../../../recipe/questions.js';
import { cut, padEnd, wrap } from '../../../text/wrap.js';
import type { Context } from '../../screen.js';
import { FieldView } from '../../widgets/field-view.js';
import { Lines } from '../../widgets/lines.js';
import type { ListState } from '../../widgets/list.js';
import { ListView } from '../../widgets/list-view.js';
import type { Suggested } from '../../widgets/suggested.js';
import { reviewRows, textColumns } from './room.js';
import { asked, completeAnswers, type InterviewState } from './state.js';

type ReviewProps = {
  readonly state: InterviewState;
  readonly list: ListState;
  readonly at: Context;
};

/** All answers to look over; the first line goes on, any other is opened to be changed. */
export function ReviewView({ state, list, at }: ReviewProps) {
  const width = at.size.columns;
  return (
    <Box flexDirection="column" width={width} flexShrink={0}>
      <Lines lines={['Your answers']} bold />
      <ListView
        rows={[firstRow(state), ...answerRows(state, width - 2)]}
        state={list}
        width={width}
        height={reviewRows(at)}
      />
    </Box>
  );
}

function firstRow({ effect }: InterviewState): string {
  return effect.plan === undefined && effect.problems.length > 0
    ? 'These answers give no plan yet: change one below'
    : 'All right so: give it a name and begin';
}

function answerRows(state: InterviewState, width: number): readonly string[] {
  const answers = completeAnswers(state.recipe, state.answers);
  const sayColumns = Math.floor(width * 0.55);
  return asked(state).map(question => {
    const answer = answers[question.id];
    const text = answer === undefined ? '' : answerText(question, answer, state.display);
    const usual = state.answers[question.id] === undefined ? ' (usual)' : '';
    return cut(`${padEnd(cut(question.say, sayColumns), sayColumns)}  ${text}${usual}`, width);
  });
}

type NameProps = { readonly name: Suggested; readonly at: Context };

/** What the build is to be called; enter makes the workbook. */
export function NameView({ name, at }: NameProps) {
  const width = textColumns(at);
  const after =
    'Enter makes the workbook: plan, boards to buy and every step. Answers can be looked up in it, ' +
    'and nothing is bought or cut yet.';
  return (
    <Box flexDirection="column" width={width} flexShrink={0}>
      <Lines lines={['What shall this build be called?']} bold />
      <Lines lines={wrap('A name to find it by, such as the place it is for.', width)} />
      <Box marginY={1}>
        <FieldView field={name.field} suggested={name.suggested} width={width} />
      </Box>
      <Lines lines={wrap(after, width)} />
    </Box>
  );
}
