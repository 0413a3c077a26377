import { Text } from 'ink';
import { textWidth } from '../../../text/width.js';
import { cut } from '../../../text/wrap.js';
import type { Context, Screen } from '../../screen.js';
import { FinishedPane } from './finished-pane.js';
import { hints } from './keys.js';
import { ListPane } from './list-pane.js';
import { PHASE } from './phase-words.js';
import { press } from './press.js';
import { open, type StepState, shownStep } from './state.js';
import { StepPane } from './step-pane.js';
import { underThumb } from './under-thumb.js';

type ViewProps = { readonly state: StepState; readonly at: Context };

function View({ state, at }: ViewProps) {
  const { build } = at;
  if (build === undefined) return <Text>No build is open.</Text>;
  const step = shownStep(state, build);
  if (state.pane.kind === 'list') return <ListPane list={state.pane.list} build={build} at={at} />;
  if (step !== undefined) return <StepPane pane={state.pane} work={{ step, build, at }} />;
  return <FinishedPane pane={state.pane} build={build} at={at} />;
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
  underThumb,
  stepSeen: (state, { build }) => build && shownStep(state, build)?.id,
  widget: ({ pane }) => (pane.kind === 'note' ? 'text' : undefined),
};
