import type { Context } from '../../screen.js';
import { type Row, Rows, withFoot } from '../../widgets/rows.js';
import { limitTop, scrollWords } from '../../widgets/scroll.js';
import { bigKeyWords } from './keys.js';
import { bodyRoom, bodyRows } from './room.js';
import type { AnswerStage } from './state.js';

/** What follows from it, and what the big key does. */
export function AnswerPane({ stage, at }: { readonly stage: AnswerStage; readonly at: Context }) {
  const { columns, rows } = at.size;
  const room = bodyRoom(stage, { at });
  const top = limitTop(stage.top, room);
  const position = scrollWords(top, room);
  const other = stage.answer.leave === undefined ? '' : `   l: ${stage.answer.leave.does}`;
  const more = position === '' ? '' : `   (${position})`;
  const foot: Row = { text: `Space: ${bigKeyWords(stage, at)}${other}${more}`, tone: 'now' };
  const body = bodyRows(stage, { at }).slice(top, top + room.height);
  return <Rows rows={withFoot(body, [foot], rows)} width={columns} height={rows} />;
}
