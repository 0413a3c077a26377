import { Box, Text } from 'ink';
import type { Context, Screen } from '../../screen.js';
import { ListView } from '../../widgets/list-view.js';
import { Question } from '../../widgets/question.js';
import { BodyPane } from './body-pane.js';
import { hints } from './keys.js';
import { LengthLine } from './length-line.js';
import { listLines } from './list-lines.js';
import { press } from './press.js';
import { questionWords } from './question-words.js';
import { listRoom } from './room.js';
import { type MistakeState, open } from './state.js';

type ViewProps = { readonly state: MistakeState; readonly at: Context };

function View({ state, at }: ViewProps) {
  const { build } = at;
  const { stage } = state;
  if (build === undefined) return <Text>No build is open.</Text>;
  if (stage.kind === 'answer' || stage.kind === 'rule-page')
    return <BodyPane stage={stage} at={at} />;
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Question words={questionWords(stage, { build, at })} at={at} />
      {stage.kind === 'left' || stage.kind === 'board' || stage.kind === 'bad-stretch' ? (
        <LengthLine stage={stage} build={build} at={at} />
      ) : (
        <ListView
          rows={listLines(stage, { build, at })}
          state={stage.list}
          width={at.size.columns}
          height={listRoom(stage, { build, at }).height}
        />
      )}
    </Box>
  );
}

/** A slip in the middle of the work: what happened, what is left, what to do now. */
export const mistakeScreen: Screen<MistakeState> = {
  name: 'mistake',
  title: ({ stage }) => (stage.kind === 'answer' ? 'What to do now' : 'Something went wrong'),
  open,
  press,
  view: View,
  hints,
  confirms: ({ stage }) => stage.kind === 'answer',
  underThumb: ({ stage }) => (stage.kind === 'answer' ? 'answer' : undefined),
};
