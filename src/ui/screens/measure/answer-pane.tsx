import type { Context } from '../../screen.js';
import { AnswerRows } from '../../widgets/answer.js';
import { bigKeyWords } from './keys.js';
import { bodyRows } from './room.js';
import type { AnswerStage } from './state.js';

/** What follows from it, and what the big key does. */
export function AnswerPane({ stage, at }: { readonly stage: AnswerStage; readonly at: Context }) {
  const other = stage.answer.leave === undefined ? '' : `   l: ${stage.answer.leave.does}`;
  const does = `Space: ${bigKeyWords(stage, at)}${other}`;
  return <AnswerRows rows={bodyRows(stage, { at })} top={stage.top} at={at} does={does} />;
}
