import { formatLength } from '../../../measure/format-length.js';
import { type Parsed, parsed } from '../../../measure/parsed.js';
import type { Build } from '../../screen.js';
import { fieldText } from '../../widgets/field.js';
import { type Answer, answerTo, answerToBoard } from './answer.js';
import { stretchWords, typedStretch } from './bad-board.js';
import { answerToBadBoard } from './bad-board-answer.js';
import type { Stage } from './state.js';
import { type FieldStage, typedLength } from './typed-length.js';

/** A stage with a line to type into. */
export type LineStage = FieldStage | Extract<Stage, { readonly kind: 'bad-stretch' }>;

/** What was typed in words, or what is wrong with it. */
export function readLine(stage: LineStage, build: Build): Parsed<string> {
  if (stage.kind === 'bad-stretch') {
    const { board } = stage.there;
    const bad = typedStretch(fieldText(stage.field), board, build);
    return bad.ok ? parsed(stretchWords(bad.value, board, build)) : bad;
  }
  const length = typedLength(stage, build);
  return length.ok ? parsed(formatLength(length.value, build.plan.display)) : length;
}

/** What to do, once the line can be read; nothing as long as it cannot. */
export function answerOfLine(stage: LineStage, build: Build, nowMs: number): Answer | undefined {
  if (stage.kind === 'bad-stretch') {
    const { section, there } = stage;
    const bad = typedStretch(fieldText(stage.field), there.board, build);
    return bad.ok ? answerToBadBoard({ section, there, bad: bad.value }, build, nowMs) : undefined;
  }
  const length = typedLength(stage, build);
  if (!length.ok) return undefined;
  const { value } = length;
  return stage.kind === 'left'
    ? answerTo({ choice: stage.choice, what: stage.what, left: value }, build, nowMs)
    : answerToBoard({ section: stage.section, length: value }, build, nowMs);
}
