import type { Build, Context, KeyHint } from '../../screen.js';
import { isAtEnd } from '../../widgets/scroll.js';
import { stepToOpen } from '../step/shown-step.js';
import { isBegun } from './pages.js';
import { type PlanState, scrollRoom } from './state.js';

export function hints(state: PlanState, at: Context): readonly KeyHint[] {
  const { build } = at;
  if (build === undefined) return [{ key: 'esc', does: 'back' }];
  const room = scrollRoom(state, build, at);
  const ends = isAtEnd(state.top, room);
  const drawn = state.page === 0 && !state.asked;
  const does = isBegun(build) ? 'answers, for a new build' : 'change answers';
  const answers: KeyHint = { key: 'a', does };
  return [
    { key: 'enter', does: enterWords(build) },
    { key: 'space', does: ends ? 'next page' : 'further down' },
    { key: '0-9', does: 'page' },
    { key: 'left/right', does: 'turn' },
    { key: '?', does: state.asked ? 'back to the page' : 'where from' },
    { key: 'v', does: state.page === 0 ? 'next view' : 'drawing' },
    ...(drawn ? [{ key: 'z', does: 'closer' }, KEYS, BACK, answers] : [answers, KEYS, BACK]),
    { key: 'up/down', does: 'scroll' },
    { key: 't', does: 'timers' },
  ];
}

const KEYS: KeyHint = { key: 'k', does: 'keys' };
const BACK: KeyHint = { key: 'esc', does: 'back' };

function enterWords(build: Build): string {
  if (stepToOpen(build) === undefined) return 'back to the bench';
  return isBegun(build) ? 'go on building' : 'start building';
}
