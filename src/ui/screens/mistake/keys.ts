import type { Event } from '../../../workbook/events.js';
import type { Context, KeyHint } from '../../screen.js';
import { KEYS, LEAVE } from '../../widgets/answer.js';
import { numberKeys } from '../step/work-hints.js';
import { listLines } from './list-lines.js';
import { isReadToEnd } from './room.js';
import type { AnswerStage, MistakeState } from './state.js';

export function hints({ stage }: MistakeState, at: Context): readonly KeyHint[] {
  const { build } = at;
  if (build === undefined) return [LEAVE];
  switch (stage.kind) {
    case 'left':
    case 'board':
    case 'bad-stretch':
      return [
        {
          key: 'enter',
          does: stage.kind === 'board' ? 'see what it is good for' : 'see what to do',
        },
        LEAVE,
        { key: 'page up', does: 'question before' },
        KEYS,
      ];
    case 'answer':
      return [
        { key: 'space', does: bigKeyWords(stage, at) },
        LEAVE,
        ...(stage.answer.page === undefined ? [] : [{ key: 'r', does: 'can it be saved' }]),
        { key: 'backspace', does: 'question before' },
        { key: 'up/down', does: 'scroll' },
        KEYS,
      ];
    case 'rule-page':
      return [{ key: 'space', does: 'back' }, LEAVE, { key: 'up/down', does: 'scroll' }, KEYS];
    default:
      return [
        { key: 'enter', does: 'that one' },
        { key: numberKeys(listLines(stage, { build, at }).length), does: 'by its number' },
        { key: 'up/down', does: 'move' },
        LEAVE,
        ...(stage.kind === 'piece' ? [] : [{ key: 'backspace', does: 'question before' }]),
        KEYS,
      ];
  }
}

const TAKES: Readonly<Partial<Record<Event['kind'], string>>> = {
  'board-added': 'put it on the rack',
  'piece-spoiled': 'do it so: one more to cut',
  'note-written': 'use it, and write a note',
};

/** What the big key does with an answer. */
export function bigKeyWords(stage: AnswerStage, at: Context): string {
  const { event } = stage.answer;
  if (!isReadToEnd(stage, { at })) return 'read on';
  if (event === undefined) return 'back to work';
  return TAKES[event.kind] ?? 'do it so';
}
