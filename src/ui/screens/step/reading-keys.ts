import type { Key, Outcome } from '../../screen.js';
import { isAtEnd, scrollTo } from '../../widgets/scroll.js';
import { closes, isNext, isSign } from './pane-signs.js';
import { picturePane } from './picture-frame.js';
import { readingRoom } from './reading.js';
import {
  type Pane,
  type ReadingKind,
  type StepBench,
  type StepState,
  show,
  WORK,
  withPane,
} from './state.js';

/** To be read on to its end and closed; the key that opened it closes it, and the others open what they do. */
export function pressReading(
  state: StepState,
  pane: Extract<Pane, { readonly kind: ReadingKind }>,
  key: Key,
  { build, step, at }: StepBench,
): Outcome<StepState> {
  const room = readingRoom(pane.kind, { build, step, at });
  if (isNext(key) && !isAtEnd(pane.top, room)) {
    return withPane(state, { ...pane, top: scrollTo(pane.top, PAGE_DOWN, room) ?? pane.top });
  }
  if (closes(key) || isNext(key) || isSign(key, OPENED_BY[pane.kind])) return withPane(state, WORK);
  if (isSign(key, 'v')) return withPane(state, picturePane({ build, step, at }));
  const other = READING_KINDS.find(kind => isSign(key, OPENED_BY[kind]));
  if (other !== undefined) return withPane(state, { kind: other, top: 0 });
  const top = scrollTo(pane.top, key, room);
  return top === undefined ? show(state) : withPane(state, { ...pane, top });
}

const PAGE_DOWN: Key = { name: 'page-down' };
const READING_KINDS: readonly ReadingKind[] = ['why', 'cautions', 'helper', 'words'];
const OPENED_BY: Readonly<Record<ReadingKind, string>> = {
  why: 'w',
  cautions: 'c',
  helper: 'h',
  words: 'g',
};
