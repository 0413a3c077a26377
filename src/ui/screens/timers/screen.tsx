import type { Context, Screen } from '../../screen.js';
import { Rows } from '../../widgets/rows.js';
import { hints } from './keys.js';
import { open, press, type TimersState } from './state.js';
import { timersRows } from './timer-rows.js';

type ViewProps = { readonly state: TimersState; readonly at: Context };

function View({ state, at }: ViewProps) {
  const { build, size } = at;
  if (build === undefined) return null;
  const rows = timersRows({ state, build, at });
  return <Rows rows={rows} width={size.columns} height={size.rows} />;
}

/** What is clamped, wet or curing, until when, and what to do in the meantime. */
export const timersScreen: Screen<TimersState> = {
  name: 'timers',
  title: () => 'Timers',
  open,
  press,
  view: View,
  hints,
};
