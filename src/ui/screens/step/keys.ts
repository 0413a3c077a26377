import type { Step } from '../../../plan/plan.js';
import { hasCloseUps } from '../../pictures.js';
import type { Build, Context, KeyHint } from '../../screen.js';
import { isAtEnd } from '../../widgets/scroll.js';
import { readingRoom } from './reading.js';
import { type ReadingKind, type StepState, shownStep } from './state.js';
import { subjectOf } from './subject.js';
import { workHints } from './work-hints.js';

const BACK: KeyHint = { key: 'esc', does: 'back to the step' };

/** Which keys work now, the ones most needed in front. */
export function hints(state: StepState, at: Context): readonly KeyHint[] {
  const { build } = at;
  if (build === undefined) return [{ key: 'esc', does: 'back' }];
  const step = shownStep(state, build);
  switch (state.pane.kind) {
    case 'work':
      return step === undefined ? FINISHED : workHints({ step, build, at }, topOf(state));
    case 'why':
    case 'cautions':
    case 'helper':
    case 'words':
      return [
        ...(hasMore(state, step, at)
          ? [{ key: 'space', does: 'read on' }, BACK]
          : [{ key: 'space', does: 'back to the step' }]),
        { key: 'up/down', does: 'scroll' },
        { key: 'v', does: 'picture' },
        ...READING.filter(({ kind }) => kind !== state.pane.kind).map(({ hint }) => hint),
      ];
    case 'picture':
      return [
        { key: 'v', does: 'next view' },
        { key: 'left/right', does: 'turn' },
        ...closerKey(step, build),
        { key: 'space', does: 'back to the step' },
      ];
    case 'timers':
      return [
        { key: 'space', does: 'start the next' },
        { key: '1-9', does: 'start that one' },
        { key: 't', does: 'all timers' },
        BACK,
      ];
    case 'note':
      return [
        { key: 'enter', does: 'keep the note' },
        { key: 'esc', does: 'no note' },
      ];
    case 'list':
      return [
        { key: 'enter', does: 'show that step' },
        { key: 'up/down', does: 'move' },
        { key: '0-9', does: 'number of the step' },
        { key: 'page up/down', does: 'further' },
        BACK,
      ];
    case 'take-back':
      return [
        { key: 'u', does: 'yes, take it back' },
        { key: 'any other', does: 'no' },
      ];
    case 'done-anyway':
      return [
        { key: 'd', does: 'yes, done' },
        { key: 'any other', does: 'no' },
      ];
  }
}

/** More of what is read lies below. */
function hasMore({ pane }: StepState, step: Step | undefined, at: Context): boolean {
  const { build } = at;
  if (build === undefined || step === undefined || !('top' in pane)) return false;
  if (pane.kind === 'work') return false;
  return !isAtEnd(pane.top, readingRoom(pane.kind, { build, step, at }));
}

const READING: readonly { readonly kind: ReadingKind; readonly hint: KeyHint }[] = [
  { kind: 'helper', hint: { key: 'h', does: 'for the helper' } },
  { kind: 'words', hint: { key: 'g', does: 'all words' } },
  { kind: 'why', hint: { key: 'w', does: 'why' } },
  { kind: 'cautions', hint: { key: 'c', does: 'cautions' } },
];

function closerKey(step: Step | undefined, { plan }: Build): readonly KeyHint[] {
  if (step === undefined || !hasCloseUps(subjectOf(step, plan))) return [];
  return [{ key: 'z', does: 'closer' }];
}

const FINISHED: readonly KeyHint[] = [
  { key: 'space', does: 'put things away' },
  { key: 'backspace', does: 'look back' },
  { key: 'l', does: 'list of steps' },
  { key: 'u', does: 'undo' },
  { key: 'm', does: 'mistake' },
  { key: 't', does: 'timers' },
  { key: 'b', does: 'care sheet, record' },
  { key: '?', does: 'keys' },
];

function topOf({ pane }: StepState): number {
  return pane.kind === 'work' ? (pane.top ?? 0) : 0;
}
