import type { Context } from '../../screen.js';
import { AnswerRows } from '../../widgets/answer.js';
import { bigKeyWords } from './keys.js';
import { bodyRows } from './room.js';
import type { Stage } from './state.js';

type BodyProps = {
  readonly stage: Extract<Stage, { readonly kind: 'answer' | 'rule-page' }>;
  readonly at: Context;
};

/** The answer or a rule page, and what the big key does. */
export function BodyPane({ stage, at }: BodyProps) {
  const does = stage.kind === 'answer' ? bigKeyWords(stage, at) : 'back';
  const rows = bodyRows(stage, { at });
  return <AnswerRows rows={rows} top={stage.top} at={at} does={`Space: ${does}`} />;
}
