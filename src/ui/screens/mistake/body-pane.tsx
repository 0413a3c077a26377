import type { Context } from '../../screen.js';
import { type Row, Rows, withFoot } from '../../widgets/rows.js';
import { limitTop, scrollWords } from '../../widgets/scroll.js';
import { bigKeyWords } from './keys.js';
import { bodyRoom, bodyRows } from './room.js';
import type { Stage } from './state.js';

type BodyProps = {
  readonly stage: Extract<Stage, { readonly kind: 'answer' | 'rule-page' }>;
  readonly at: Context;
};

/** The answer or a rule page, and what the big key does. */
export function BodyPane({ stage, at }: BodyProps) {
  const { columns, rows } = at.size;
  const room = bodyRoom(stage, { at });
  const top = limitTop(stage.top, room);
  const does = stage.kind === 'answer' ? bigKeyWords(stage, at) : 'back';
  const position = scrollWords(top, room);
  const text = `Space: ${does}${position === '' ? '' : `   (${position})`}`;
  const foot: Row = { text, tone: 'now' };
  const body = bodyRows(stage, { at }).slice(top, top + room.height);
  return <Rows rows={withFoot(body, [foot], rows)} width={columns} height={rows} />;
}
