import type { Build, Context, Key, Outcome } from '../../screen.js';
import { factLines, plainer } from '../../widgets/facts.js';
import type { Row } from '../../widgets/rows.js';
import { scrollTo } from '../../widgets/scroll.js';
import { asksToEnter, stepToOpen } from '../step/shown-step.js';
import { recapFacts } from './recap-facts.js';

export type ResumeState = { readonly top: number };

export function open(): ResumeState {
  return { top: 0 };
}

const URGENT = /^(?:Time is up|Your note|Buy first|Next|Open first) /;

/** The recap as rows; what asks for something stands out. */
export function recapRows(build: Build, at: Context): readonly Row[] {
  const { size, ascii } = at;
  const plain = plainer(ascii);
  const facts = recapFacts(build, at).map(({ name, text }) => ({ name, text: plain(text) }));
  return factLines(facts, size.columns).map((text): Row => {
    if (/^(?:Time is up|Rags) /.test(text)) return { text, tone: 'heed' };
    return URGENT.test(text) ? { text, tone: 'strong' } : { text };
  });
}

/** The last row says what the big key does. */
export function recapHeight({ size }: Context): number {
  return Math.max(1, size.rows - 2);
}

export function press(state: ResumeState, key: Key, at: Context): Outcome<ResumeState> {
  const { build, nowMs } = at;
  if (build === undefined) return { state, asks: [{ kind: 'leave' }] };
  switch (key.name) {
    case 'space':
    case 'enter':
    case 'page-down':
      return { state, asks: [...resumed(build, nowMs), ...asksToEnter(build, nowMs)] };
    case 'escape':
    case 'backspace':
    case 'page-up':
      return { state, asks: [{ kind: 'leave' }] };
    case 'character':
      return { state, asks: goBy(key.text, build) };
    default: {
      const room = { count: recapRows(build, at).length, height: recapHeight(at) };
      return { state: { top: scrollTo(state.top, key, room) ?? state.top }, asks: [] };
    }
  }
}

/** A build that was only looked at is not paused, and needs no return. */
function resumed({ progress }: Build, atMs: number): Outcome<ResumeState>['asks'] {
  if (progress.paused === undefined) return [];
  return [{ kind: 'record', events: [{ kind: 'resumed', atMs }] }];
}

function goBy(sign: string, build: Build): Outcome<ResumeState>['asks'] {
  switch (sign) {
    case 'y':
      return stepToOpen(build)?.day === undefined ? [] : [{ kind: 'go', to: 'day' }];
    case 'b':
      return [{ kind: 'go', to: 'plan' }];
    case 't':
      return [{ kind: 'go', to: 'timers' }];
    case '?':
      return [{ kind: 'go', to: 'keys' }];
    default:
      return [];
  }
}
