import type { Context, KeyHint } from '../../screen.js';
import { leavingLines, type PauseState } from './state.js';

export function hints(state: PauseState, { build, nowMs }: Context): readonly KeyHint[] {
  if (state.stage === 'note') {
    return [
      { key: 'enter', does: 'go on, with or without a note' },
      { key: 'esc', does: 'back to work' },
    ];
  }
  const lines = build === undefined ? [] : leavingLines(build, nowMs);
  const all = lines.every(({ id }) => state.seenTo.includes(id));
  return [
    { key: 'space', does: all ? 'lock up' : 'seen to' },
    { key: `1-${lines.length}`, does: 'tick' },
    { key: 'n', does: 'note' },
    ...(all ? [] : [{ key: 'p', does: 'leave now' }]),
    { key: 'esc', does: 'back to work' },
    { key: '?', does: 'keys' },
    { key: 'up/down', does: 'scroll' },
  ];
}
