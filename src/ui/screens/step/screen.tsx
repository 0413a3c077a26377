import { Box, Text } from 'ink';
import { textWidth } from '../../../text/width.js';
import { cut } from '../../../text/wrap.js';
import type { Context, Screen } from '../../screen.js';
import { ListView } from '../../widgets/list-view.js';
import { Rows } from '../../widgets/rows.js';
import { finishedRows } from './finished-rows.js';
import { hints } from './keys.js';
import { listRoom, listRows } from './list-rows.js';
import { PHASE } from './phase-words.js';
import { press } from './press.js';
import { open, type StepState, shownStep } from './state.js';
import { StepPane } from './step-pane.js';

type ViewProps = { readonly state: StepState; readonly at: Context };

function View({ state, at }: ViewProps) {
  const { build, size } = at;
  if (build === undefined) return <Text>No build is open.</Text>;
  const step = shownStep(state, build);
  if (state.pane.kind === 'list') {
    const { height } = listRoom(build, at);
    return (
      <Box flexDirection="column">
        <Rows rows={[{ text: 'Which step?', tone: 'strong' }]} width={size.columns} height={1} />
        <ListView
          rows={listRows(build, size.columns - 2)}
          state={state.pane.list}
          width={size.columns}
          height={height}
        />
      </Box>
    );
  }
  if (step !== undefined) return <StepPane pane={state.pane} work={{ step, build, at }} />;
  return <Rows rows={finishedRows(build, at)} width={size.columns} height={size.rows} />;
}

/** `Step 6 of 31 - cutting`; the build's own name stands beside it. */
function title(state: StepState, { build, size }: Context): string {
  const step = build === undefined ? undefined : shownStep(state, build);
  if (build === undefined || step === undefined) return 'Finished';
  const number = build.plan.steps.indexOf(step) + 1;
  const words = `Step ${number} of ${build.plan.steps.length}, ${PHASE[step.phase]}`;
  return textWidth(words) > size.columns ? cut(words, size.columns) : words;
}

/** The work itself: one thing to do at a time. */
export const stepScreen: Screen<StepState> = {
  name: 'step',
  title,
  open,
  press,
  view: View,
  hints,
  widget: ({ pane }) => (pane.kind === 'note' ? 'text' : undefined),
};
