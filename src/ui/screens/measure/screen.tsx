import { Box, Text } from 'ink';
import type { Context, Screen } from '../../screen.js';
import { ListView } from '../../widgets/list-view.js';
import { Question } from '../../widgets/question.js';
import { AnswerPane } from './answer-pane.js';
import { hints } from './keys.js';
import { press } from './press.js';
import { questionWords } from './question-words.js';
import { ReadingLine } from './reading-line.js';
import { listLines, listRoom } from './room.js';
import { type MeasureState, open } from './state.js';

type ViewProps = { readonly state: MeasureState; readonly at: Context };

function View({ state, at }: ViewProps) {
  const { build } = at;
  const { stage } = state;
  if (build === undefined) return <Text>No build is open.</Text>;
  if (stage.kind === 'answer') return <AnswerPane stage={stage} at={at} />;
  return (
    <Box flexDirection="column" flexShrink={0}>
      <Question words={questionWords(stage, { build, at })} at={at} />
      {stage.kind === 'reading' ? (
        <ReadingLine stage={stage} build={build} at={at} />
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

/** What the tape showed, beside what was planned: what it changes is told before it counts. */
export const measureScreen: Screen<MeasureState> = {
  name: 'measure',
  title: ({ stage }) => (stage.kind === 'answer' ? 'What follows from it' : 'Measured'),
  open,
  press,
  view: View,
  hints,
  confirms: ({ stage }) => stage.kind === 'answer',
  underThumb: ({ stage }) => (stage.kind === 'answer' ? 'answer' : undefined),
};
