import type { Context, KeyHint } from '../../screen.js';
import { numberKeys } from '../step/work-hints.js';
import { isAllSeenTo, leavingLines, mustFirst, type PauseState } from './state.js';

export function hints(state: PauseState, at: Context): readonly KeyHint[] {
  if (state.stage === 'note') {
    return [
      { key: 'enter', does: 'go on, with or without a note' },
      { key: 'esc', does: 'back to work' },
    ];
  }
  const count = at.build === undefined ? 0 : leavingLines(at.build, at.nowMs).length;
  const all = isAllSeenTo(state, at);
  return [
    { key: 'space', does: all ? 'lock up' : 'seen to' },
    { key: numberKeys(count), does: 'tick' },
    { key: 'n', does: 'note' },
    ...(all || mustFirst(state, at) !== undefined ? [] : [{ key: 'p', does: 'leave now' }]),
    { key: 'esc', does: 'back to work' },
    { key: '?', does: 'keys' },
    { key: 'up/down', does: 'scroll' },
  ];
}
