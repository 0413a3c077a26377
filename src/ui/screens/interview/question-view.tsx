import { Box, Text } from 'ink';
import type { Question } from '../../../recipe/recipe.js';
import { wrap } from '../../../text/wrap.js';
import type { Context } from '../../screen.js';
import { ACCENT } from '../../theme.js';
import { plainer } from '../../widgets/facts.js';
import { fieldText } from '../../widgets/field.js';
import { FieldView } from '../../widgets/field-view.js';
import { Lines } from '../../widgets/lines.js';
import type { ListState } from '../../widgets/list.js';
import { ListView } from '../../widgets/list-view.js';
import { formWords, limitWords, pastWords, readWords } from './question-words.js';
import { optionLines, optionRows, reasonRows, textColumns } from './room.js';
import { type Draft, draftAnswer, type InterviewState, optionsOf, questionOf } from './state.js';

type QuestionViewProps = {
  readonly state: InterviewState;
  readonly id: string;
  readonly draft: Draft;
  readonly at: Context;
};

/** One question: what is asked, why, and the answer being given with what is wrong with it. */
export function QuestionView({ state, id, draft, at }: QuestionViewProps) {
  const question = questionOf(state, id);
  const width = textColumns(at);
  return (
    <Box flexDirection="column" width={width} flexShrink={0}>
      <Lines lines={wrap(question.say, width)} bold />
      <Lines lines={wrap(question.why, width)} />
      <Box height={1} />
      {draft.kind === 'line' ? (
        <LineAnswer state={state} id={id} draft={draft} at={at} />
      ) : (
        <Options question={question} list={draft.list} at={at} />
      )}
    </Box>
  );
}

type OptionsProps = {
  readonly question: Question;
  readonly list: ListState;
  readonly at: Context;
};

function Options({ question, list, at }: OptionsProps) {
  const width = textColumns(at);
  const rows = reasonRows(question, at);
  const why = optionsOf(question)[list.row]?.why ?? '';
  return (
    <Box flexDirection="column" flexShrink={0}>
      <ListView
        rows={optionLines(question)}
        state={list}
        width={width}
        height={optionRows(question, at)}
      />
      {rows === 0 ? null : <Lines lines={['', ...wrap(why, width)]} height={rows} />}
    </Box>
  );
}

type LineAnswerProps = {
  readonly state: InterviewState;
  readonly id: string;
  readonly draft: Extract<Draft, { kind: 'line' }>;
  readonly at: Context;
};

function LineAnswer({ state, id, draft, at }: LineAnswerProps) {
  const width = textColumns(at);
  const plain = plainer(at.ascii);
  const question = questionOf(state, id);
  const answer = draftAnswer(state, id, draft);
  const isEmpty = fieldText(draft.field) === '';
  const limits = limitWords(question, state);
  const over = isEmpty && draft.suggested !== '' ? 'What you type replaces it.' : '';
  const help = [formWords(question), `${limits} ${over}`.trim()].filter(text => text !== '');
  return (
    <Box flexDirection="column" flexShrink={0}>
      <FieldView field={draft.field} suggested={draft.suggested} width={width} />
      {answer.ok ? (
        <>
          <Lines lines={indented(readWords(question, answer.value), width)} />
          <Lines lines={pastLines(plain(pastWords(answer.value, at.nowMs)), width)} />
        </>
      ) : (
        <Text bold color={ACCENT.heed} wrap="truncate">
          {wrap(plain(isEmpty ? answer.hint : `! ${answer.problem} ${answer.hint}`), width).join(
            '\n',
          )}
        </Text>
      )}
      <Box height={1} />
      <Lines lines={help.flatMap(text => wrap(text, width))} />
    </Box>
  );
}

function pastLines(text: string, width: number): readonly string[] {
  return text === '' ? [] : wrap(text, width);
}

function indented(text: string, width: number): readonly string[] {
  return text === '' ? [] : wrap(text, width - 2).map(line => `  ${line}`);
}
