import { Box, Text } from 'ink';
import type { Context, KeyHint, Screen } from '../../screen.js';
import { ACCENT } from '../../theme.js';
import { CHANGE, isUntyped } from '../../widgets/suggested.js';
import { EffectView, Picture } from './effect-view.js';
import { press } from './press.js';
import { QuestionView } from './question-view.js';
import { NameView, ReviewView } from './review-view.js';
import { effectRows, hasPicture, textColumns } from './room.js';
import { asked, begin, type InterviewState, questionOf, settle } from './state.js';

type ViewProps = { readonly state: InterviewState; readonly at: Context };

function View({ state, at }: ViewProps) {
  const { columns, rows } = at.size;
  const { plan } = state.effect;
  const left = textColumns(at);
  const { stage } = state;
  const below = effectRows(at, stage.kind === 'question' ? questionOf(state, stage.id) : undefined);
  return (
    <Box flexDirection="column" height={rows} width={columns}>
      <Box flexGrow={1} marginTop={1} overflow="hidden">
        <Main state={state} at={at} />
        {hasPicture(at) && plan !== undefined && state.stage.kind !== 'review' ? (
          <Box marginLeft={3} flexShrink={0}>
            <Picture plan={plan} columns={columns - left - 3} rows={rows - below - 1} />
          </Box>
        ) : null}
      </Box>
      {state.leaving ? (
        <Text bold color={ACCENT.heed}>
          {`! Leaving forgets these answers. Press ${leaveKey(state, at)} once more to leave, or go on.`}
        </Text>
      ) : null}
      <EffectView effect={state.effect} width={columns} height={below} />
    </Box>
  );
}

/** Esc goes to the question before where there is one; a copy has all its answers already. */
function leaveKey({ stage }: InterviewState, { interview }: Context): string {
  return stage.kind === 'review' && interview?.from === undefined ? 'q' : 'esc';
}

function Main({ state, at }: ViewProps) {
  const { stage } = state;
  switch (stage.kind) {
    case 'question':
      return <QuestionView state={state} id={stage.id} draft={stage.draft} at={at} />;
    case 'review':
      return <ReviewView state={state} list={stage.list} at={at} />;
    case 'name':
      return <NameView name={stage.name} at={at} />;
  }
}

function title(state: InterviewState): string {
  const { recipe, stage } = state;
  if (stage.kind !== 'question') return recipe.title;
  const questions = asked(state);
  const place = questions.findIndex(({ id }) => id === stage.id);
  const group = recipe.groups.find(({ questions: own }) => own.some(({ id }) => id === stage.id));
  return `${group?.title ?? recipe.title}: question ${place + 1} of ${questions.length}`;
}

function hints(state: InterviewState, at: Context): readonly KeyHint[] {
  const { stage, reviewing } = state;
  switch (stage.kind) {
    case 'question':
      return [
        ...(stage.draft.kind === 'options' ? OPTION_HINTS : []),
        { key: 'enter', does: 'take this' },
        ...(stage.draft.kind === 'line' && isUntyped(stage.draft) ? [CHANGE] : []),
        { key: 'esc', does: 'back' },
        { key: 'tab', does: reviewing ? 'all answers' : 'the usual for all the rest' },
        { key: '?', does: 'keys' },
      ];
    case 'review':
      return [
        { key: 'up/down', does: 'move' },
        { key: 'enter', does: 'choose' },
        ...(leaveKey(state, at) === 'esc' ? [] : [{ key: 'esc', does: 'back' }]),
        { key: leaveKey(state, at), does: 'leave' },
        { key: '?', does: 'keys' },
      ];
    case 'name':
      return [
        { key: 'enter', does: 'make the workbook' },
        ...(isUntyped(stage.name) ? [CHANGE] : []),
        { key: 'esc', does: 'back to the answers' },
      ];
  }
}

const OPTION_HINTS: readonly KeyHint[] = [{ key: 'up/down or 1-9', does: 'mark' }];

function open({ interview, display }: Context): InterviewState {
  if (interview === undefined) throw new Error('an interview about nothing');
  return begin(interview.recipe, interview.answers, display);
}

/** The questions of a project, one at a time, and what each answer does to the piece. */
export const interviewScreen: Screen<InterviewState> = {
  name: 'interview',
  title,
  open,
  press,
  view: View,
  hints,
  settle,
  confirms: ({ stage }) => stage.kind === 'name',
};
