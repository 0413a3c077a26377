import { Box } from 'ink';
import { wrap } from '../../../text/wrap.js';
import type { Context, Screen } from '../../screen.js';
import { NoteLine } from '../../widgets/note-line.js';
import { BLANK, plainRows, Rows } from '../../widgets/rows.js';
import { hints } from './keys.js';
import { leaveRows, NOTE_ASKED, placeRows } from './pause-rows.js';
import { isAllSeenTo, open, type PauseState, press } from './state.js';

type ViewProps = { readonly state: PauseState; readonly at: Context };

function View({ state, at }: ViewProps) {
  const { build, size } = at;
  if (build === undefined) return null;
  const { columns, rows } = size;
  if (state.stage === 'leave') {
    return <Rows rows={leaveRows({ state, build, at })} width={columns} height={rows} />;
  }
  const asked = [
    ...placeRows({ build, at }),
    BLANK,
    ...plainRows(wrap(NOTE_ASKED, columns)),
    BLANK,
  ];
  return (
    <Box flexDirection="column" width={columns}>
      <Rows rows={asked} width={columns} height={Math.max(1, rows - 4)} />
      <NoteLine text={state.note} hint="nothing to remember" width={columns} />
    </Box>
  );
}

/** The end of a session: a line for next time, what has to be looked after, and home. */
export const pauseScreen: Screen<PauseState> = {
  name: 'pause',
  title: ({ stage }) => (stage === 'note' ? 'Pause' : 'Before you leave'),
  open,
  press,
  view: View,
  hints,
  confirms: (state, at) => state.stage === 'leave' && isAllSeenTo(state, at),
  widget: ({ stage }) => (stage === 'note' ? 'text' : undefined),
};
