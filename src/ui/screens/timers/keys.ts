import { ringing } from '../../../workbook/timers.js';
import type { Context, KeyHint } from '../../screen.js';
import type { TimersState } from './state.js';

export function hints(state: TimersState, { build, nowMs }: Context): readonly KeyHint[] {
  if (state.stopping !== undefined) {
    return [
      { key: 'x', does: 'yes, stop it' },
      { key: 'any other', does: 'no' },
    ];
  }
  const timers = build?.progress.timers ?? [];
  const rings = build !== undefined && ringing(build.progress, nowMs).length > 0;
  const back: KeyHint = { key: 'esc', does: 'back' };
  if (timers.length === 0) return [back, { key: '?', does: 'keys' }];
  return [
    { key: 'space', does: rings ? 'heard' : 'back' },
    ...(timers.length > 1 ? [{ key: 'up/down', does: 'mark' }] : []),
    { key: 'x', does: 'stop it' },
    ...(rings
      ? [
          { key: 'z', does: 'again in 10 min' },
          { key: 's', does: 'silence' },
        ]
      : []),
    back,
    { key: '?', does: 'keys' },
  ];
}
