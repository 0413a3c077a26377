import type { Context, Screen } from '../../screen.js';
import { type Row, Rows, withFoot } from '../../widgets/rows.js';
import { limitTop, scrollWords } from '../../widgets/scroll.js';
import { hints } from './keys.js';
import { open, press, type ResumeState, recapHeight, recapRows } from './state.js';

type ViewProps = { readonly state: ResumeState; readonly at: Context };

function View({ state, at }: ViewProps) {
  const { build, size } = at;
  if (build === undefined) return null;
  const rows = recapRows(build, at);
  const room = { count: rows.length, height: recapHeight(at) };
  const position = scrollWords(state.top, room);
  const words = position === '' ? 'Space: to the bench' : `Space: to the bench   (${position})`;
  const foot: Row = { text: words, tone: 'now' };
  const top = limitTop(state.top, room);
  return (
    <Rows
      rows={withFoot(rows.slice(top, top + room.height), [foot], size.rows)}
      width={size.columns}
      height={size.rows}
    />
  );
}

/** One screen for somebody who was away: where it was left, and the next move. */
export const resumeScreen: Screen<ResumeState> = {
  name: 'resume',
  title: () => 'Where you left it',
  open,
  press,
  view: View,
  hints,
};
