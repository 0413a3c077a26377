import { padEnd, wrap } from '../../../text/wrap.js';
import type { Context, Key, KeyHint, Outcome, Screen } from '../../screen.js';
import { Lines } from '../../widgets/lines.js';

/** The first line that is seen. */
type State = { readonly top: number };

const EVERYWHERE: readonly KeyHint[] = [
  { key: 'esc', does: 'back, to where you came from' },
  { key: 'tab', does: 'when a time is up: "heard", it stops ringing' },
  { key: 'ctrl-c', does: 'leave at once; everything up to the last step is saved' },
  { key: 'ctrl-z', does: 'to the shell and, with fg, back' },
];

const WORTH_KNOWING = [
  'Every step, count and timer is on disk before the screen shows it. "NOT SAVED" at the top means that the disk refused: free some room, and any key tries again.',
  'Timers follow the clock on the wall. They are right after sleep, a restart or days away, and they ring wherever you are in here.',
  'A number key takes that line of a menu at once. A clicker with page down, or the space bar, means "done, next" in a step.',
  'Lengths may be typed in any way: 5 ft 3-1/2 in, 63.5in, 161 cm.',
];

function linesOf({ under, size }: Context): string[] {
  const width = Math.min(size.columns, 78);
  const here = under === undefined ? [] : [under.title, ...keyLines(under.hints), ''];
  const notes = WORTH_KNOWING.flatMap(text => ['', ...wrap(text, width)]);
  return [...here, 'On every screen', ...keyLines(EVERYWHERE), ...notes];
}

function keyLines(hints: readonly KeyHint[]): string[] {
  return hints.map(({ key, does }) => `  ${padEnd(`[${key}]`, 14)} ${does}`);
}

function press(state: State, key: Key, at: Context): Outcome<State> {
  const { rows } = at.size;
  const last = Math.max(0, linesOf(at).length - rows);
  const to = (top: number): Outcome<State> => ({
    state: { top: Math.min(Math.max(0, top), last) },
    asks: [],
  });
  switch (key.name) {
    case 'up':
      return to(state.top - 1);
    case 'down':
      return to(state.top + 1);
    case 'page-up':
      return to(state.top - rows);
    case 'space':
    case 'page-down':
      return to(state.top + rows);
    case 'escape':
    case 'enter':
    case 'left':
    case 'backspace':
      return { state, asks: [{ kind: 'leave' }] };
    default:
      return { state, asks: [] };
  }
}

function View({ state, at }: { readonly state: State; readonly at: Context }) {
  return <Lines lines={linesOf(at).slice(state.top, state.top + at.size.rows)} />;
}

function hints(_state: State, at: Context): readonly KeyHint[] {
  const more = linesOf(at).length > at.size.rows;
  return [...(more ? [{ key: 'down', does: 'more' }] : []), { key: 'esc', does: 'back' }];
}

/** Which keys work on the screen beneath, which work everywhere, and what is worth knowing. */
export const keysScreen: Screen<State> = {
  name: 'keys',
  title: () => 'Keys',
  open: () => ({ top: 0 }),
  press,
  view: View,
  hints,
};
