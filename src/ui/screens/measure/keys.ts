import type { Context, KeyHint } from '../../screen.js';
import { KEYS, LEAVE } from '../../widgets/answer.js';
import { numberKeys } from '../step/work-hints.js';
import { isReadToEnd, listLines } from './room.js';
import { type AnswerStage, type MeasureState, wantedOf } from './state.js';

export function hints({ stage }: MeasureState, at: Context): readonly KeyHint[] {
  const { build } = at;
  if (build === undefined) return [LEAVE];
  switch (stage.kind) {
    case 'reading':
      return [
        { key: 'enter', does: wantedOf(stage.of) > 2 ? 'next reading; empty: all' : 'enter it' },
        LEAVE,
        { key: 'page up', does: 'one back' },
        KEYS,
      ];
    case 'answer':
      return [
        { key: 'space', does: bigKeyWords(stage, at) },
        ...(stage.answer.leave === undefined ? [] : [{ key: 'l', does: stage.answer.leave.does }]),
        LEAVE,
        { key: 'backspace', does: 'back to the readings' },
        { key: 'up/down', does: 'scroll' },
        KEYS,
      ];
    default:
      return [
        { key: 'enter', does: 'that one' },
        { key: numberKeys(listLines(stage, { build, at }).length), does: 'by its number' },
        { key: 'up/down', does: 'move' },
        LEAVE,
        KEYS,
      ];
  }
}

/** What the big key does with an answer. */
export function bigKeyWords(stage: AnswerStage, at: Context): string {
  return isReadToEnd(stage, { at }) ? stage.answer.does : 'read on';
}
