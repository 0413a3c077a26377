import type { Step } from '../../../plan/plan.js';
import { hasCloseUps } from '../../pictures.js';
import type { Build, Context, KeyHint } from '../../screen.js';
import { isAtEnd } from '../../widgets/scroll.js';
import { briefingRoom } from './briefing-rows.js';
import { type Move, nextMove } from './next-move.js';
import { readingRoom } from './reading.js';
import { type ReadingKind, type StepState, shownStep } from './state.js';
import { subjectOf } from './subject.js';
import { isMeasured, toMeasure } from './to-measure.js';

const BACK: KeyHint = { key: 'esc', does: 'back to the step' };

/** Which keys work now, the ones most needed in front. */
export function hints(state: StepState, at: Context): readonly KeyHint[] {
  const { build } = at;
  if (build === undefined) return [{ key: 'esc', does: 'back' }];
  const step = shownStep(state, build);
  switch (state.pane.kind) {
    case 'work':
      return step === undefined ? FINISHED : workHints(step, build, { at, top: topOf(state) });
    case 'why':
    case 'cautions':
    case 'helper':
    case 'words':
      return [
        ...(hasMore(state, step, at)
          ? [{ key: 'space', does: 'read on' }, BACK]
          : [{ key: 'space', does: 'back to the step' }]),
        { key: 'up/down', does: 'scroll' },
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

/** The keys of so many lines: `1`, `1-4`. */
export function numberKeys(count: number): string {
  return count < 2 ? '1' : `1-${Math.min(9, count)}`;
}

type Seen = { readonly at: Context; readonly top: number };

function topOf({ pane }: StepState): number {
  return pane.kind === 'work' ? (pane.top ?? 0) : 0;
}

/** On the big key first, and only what does something at this step. */
function workHints(step: Step, build: Build, { at, top }: Seen): readonly KeyHint[] {
  const move = nextMove(step, build, at.nowMs);
  const unread = move.kind === 'brief' && !isAtEnd(top, briefingRoom(move, { step, build, at }));
  const open = move.kind !== 'go-on' && move.kind !== 'brief';
  const counted: readonly KeyHint[] = open && step.tally ? [{ key: '+ -', does: 'count' }] : [];
  const ticked: readonly KeyHint[] =
    open && step.look.length > 0 ? [{ key: numberKeys(step.look.length), does: 'tick' }] : [];
  const here = isMeasured(toMeasure(step, build.plan));
  const timer = step.timers.length > 0 ? 'timer' : 'timers';
  return [
    { key: 'space', does: unread ? 'read on' : bigKeyDoes(move) },
    { key: 'u', does: 'undo' },
    { key: '?', does: 'keys' },
    ...counted,
    ...(here && open ? [MEASURE] : []),
    ...(move.kind === 'brief' && move.page.kind === 'refresh'
      ? [{ key: 'f', does: 'another helper' }]
      : []),
    { key: 'h', does: 'helper' },
    { key: 'w', does: 'why' },
    { key: 'v', does: 'picture' },
    { key: 't', does: timer },
    ...(step.day === undefined ? [] : [{ key: 'y', does: 'the day' }]),
    { key: 'n', does: 'note' },
    { key: 'p', does: 'pause' },
    { key: 'm', does: 'mistake' },
    { key: 'l', does: 'list' },
    ...(step.care.length > 0 ? [{ key: 'c', does: 'cautions' }] : []),
    ...ticked,
    ...(open ? [{ key: 'd', does: 'done anyway' }] : []),
    { key: 'b', does: 'plan' },
    { key: 'g', does: 'words' },
    ...(here && open ? [] : [MEASURE]),
    { key: 'backspace', does: 'step before' },
    { key: 'up/down', does: 'scroll' },
    { key: 'right', does: 'look ahead' },
    { key: 'esc', does: 'leave' },
  ];
}

const MEASURE: KeyHint = { key: 's', does: 'measured' };

function isSignedOffHere({ page }: Extract<Move, { readonly kind: 'brief' }>): boolean {
  return page.kind !== 'read' && page.kind !== 'heed';
}

function bigKeyDoes(move: Move): string {
  if (move.kind === 'brief' && isSignedOffHere(move)) return 'signed off';
  return move.kind === 'wait' && move.begins ? 'what meanwhile' : BIG_KEY[move.kind];
}

const BIG_KEY: Readonly<Record<Move['kind'], string>> = {
  brief: 'understood',
  count: 'one more',
  check: 'right, tick',
  'start-timer': 'start timer',
  wait: 'wait',
  'measure-first': 'measure it',
  'tell-day': 'the day',
  'not-today': 'what instead',
  finish: 'done, next',
  'go-on': 'next',
};
