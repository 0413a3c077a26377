import type { Context, KeyHint } from '../../screen.js';
import { stepToOpen } from '../step/shown-step.js';
import { type ResumeState, recapHeight, recapRows } from './state.js';

export function hints(_state: ResumeState, at: Context): readonly KeyHint[] {
  const { build } = at;
  const long = build !== undefined && recapRows(build, at).length > recapHeight(at);
  return [
    { key: 'space', does: 'to the bench' },
    ...(long ? [{ key: 'up/down', does: 'scroll' }] : []),
    ...(build !== undefined && stepToOpen(build)?.day !== undefined
      ? [{ key: 'y', does: 'the day' }]
      : []),
    { key: 'b', does: 'plan' },
    { key: 't', does: 'timers' },
    { key: 'esc', does: 'back' },
    { key: '?', does: 'keys' },
  ];
}
