import type { Build, Context, KeyHint } from '../../screen.js';
import { limitTop } from '../../widgets/scroll.js';
import { type PlanState, scrollRoom } from './state.js';

export function hints(state: PlanState, at: Context): readonly KeyHint[] {
  const { build } = at;
  if (build === undefined) return [{ key: 'esc', does: 'back' }];
  const room = scrollRoom(state, build, at);
  const ends = limitTop(state.top, room) + room.height >= room.count;
  return [
    { key: 'enter', does: begun(build) ? 'go on building' : 'start building' },
    { key: 'space', does: ends ? 'next page' : 'further down' },
    { key: '1-9 0', does: 'page' },
    { key: 'left/right', does: 'turn' },
    { key: '?', does: state.asked ? 'back to the page' : 'where from' },
    { key: 'v', does: state.page === 0 ? 'next view' : 'drawing' },
    { key: 'a', does: begun(build) ? 'answers, for a new build' : 'change answers' },
    { key: 'k', does: 'keys' },
    { key: 'esc', does: 'back' },
    { key: 'up/down', does: 'scroll' },
    { key: 't', does: 'timers' },
  ];
}

function begun({ progress }: Build): boolean {
  return progress.done.size > 0 || progress.tallies.size > 0;
}
