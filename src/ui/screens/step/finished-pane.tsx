import { cut } from '../../../text/wrap.js';
import type { Build, Context } from '../../screen.js';
import { plainer } from '../../widgets/facts.js';
import { type Row, Rows, withFoot } from '../../widgets/rows.js';
import { finishedRows } from './finished-rows.js';
import { questionOf } from './question.js';
import type { Pane } from './state.js';

type FinishedProps = { readonly pane: Pane; readonly build: Build; readonly at: Context };

/** The end of a build. */
export function FinishedPane({ pane, build, at }: FinishedProps) {
  const { columns, rows } = at.size;
  const question = questionOf(pane, undefined, build);
  const foot: Row =
    question === undefined
      ? { text: 'Space: put things away', tone: 'now' }
      : { text: cut(plainer(at.ascii)(question), columns), tone: 'heed' };
  return (
    <Rows rows={withFoot(finishedRows(build, at), [foot], rows)} width={columns} height={rows} />
  );
}
