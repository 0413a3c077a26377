import type { Phase } from '../../../recipe/recipe.js';
import { isUp } from '../../../workbook/timers.js';
import type { KeyHint } from '../../screen.js';
import { isAtEnd } from '../../widgets/scroll.js';
import { briefingRoom } from './briefing-rows.js';
import { type Move, nextMove, openChecks } from './next-move.js';
import { timersAt } from './open-in-glue-up.js';
import { notesOf } from './said-blocks.js';
import { isMeasured, toMeasure } from './to-measure.js';
import { layOutWork, roomOf } from './work-layout.js';
import type { Work } from './work-rows.js';

/**
 * What somebody needs at this step as it stands, the big key first; then what is the same at every step; the
 * rest is for the page of keys.
 */
export function workHints(work: Work, top: number): readonly KeyHint[] {
  const move = nextMove(work.step, work.build, work.at.nowMs);
  const own = move.kind === 'brief' ? briefHints(move, work, top) : stepHints(move, work);
  const always = alwaysHints(work).map((hint): KeyHint => ({ ...hint, place: 'always' }));
  const shown = new Set([...own, ...always].map(({ key }) => key));
  const rest = REST.filter(({ key }) => !shown.has(key));
  return [...own, ...always, ...rest.map((hint): KeyHint => ({ ...hint, place: 'more' }))];
}

type Briefing = Extract<Move, { readonly kind: 'brief' }>;

function briefHints(move: Briefing, work: Work, top: number): readonly KeyHint[] {
  const unread = !isAtEnd(top, briefingRoom(move, work));
  return [
    { key: 'space', does: unread ? 'read on' : bigKeyDoes(move) },
    ...(move.page.kind === 'refresh' ? [{ key: 'f', does: 'another helper' }] : []),
    ...cautionHint(work),
    ...waitHint(work),
  ];
}

/** More than these besides the ones that are always there crowd the foot. */
const MOST = 7;
/** With fewer there is room for what one looks up. */
const FEW = 5;

/** In the order in which they are needed: where there are too many, the last ones give way. */
function stepHints(move: Move, work: Work): readonly KeyHint[] {
  const { step, build } = work;
  const open = move.kind !== 'go-on';
  const many = move.kind === 'check' && openChecks(step, build).length > 1;
  const notes = notesOf(work).length;
  const all: readonly KeyHint[] = [
    { key: 'space', does: bigKeyDoes(move) },
    ...(move.kind === 'count' ? [COUNT] : []),
    ...(many ? [{ key: numberKeys(step.look.length), does: 'tick' }] : []),
    ...(open && isTapeWanted(move, work) ? [MEASURE] : []),
    ...timerHint(work),
    ...cautionHint(work),
    ...(step.day === undefined || move.kind === 'tell-day' ? [] : [DAY]),
    ...(open ? [] : [BEFORE, LIST]),
    ...(notes === 0 && step.phase !== 'plan' ? [] : [{ key: 'n', does: noteDoes(notes) }]),
    ...(open && CAN_GO_WRONG.includes(step.phase) ? [MISTAKE] : []),
    ...sightHints(work),
  ];
  const rest = [PLAN, WHY].slice(0, Math.max(0, FEW - all.length));
  return [...all, ...rest].slice(0, MOST);
}

/** What was noted is one key away; before the wood, where people's answers are written down, so is the pencil. */
function noteDoes(notes: number): string {
  if (notes === 0) return 'write it down';
  return notes === 1 ? 'note' : 'notes';
}

/** At the store and at the saw from the first piece on; frames and gaps once they are put together. */
function isTapeWanted(move: Move, { step, build }: Work): boolean {
  if (step.phase === 'buy') return true;
  const wanted = toMeasure(step, build.plan);
  return isMeasured(wanted) && (wanted.cutting !== undefined || move.kind !== 'count');
}

/** The picture where it has no room beside the words; scrolling where the words have none. */
function sightHints(work: Work): readonly KeyHint[] {
  const layout = layOutWork(work);
  const { count, height } = roomOf(layout);
  const isHidden = layout.picture === undefined && work.step.bright.length > 0;
  return [...(count > height ? [SCROLL] : []), ...(isHidden ? [PICTURE] : [])];
}

/** The timers of the step, or of another one that is waited for. */
function timerHint(work: Work): readonly KeyHint[] {
  return timersAt(work.step, work.build).length > 0
    ? [{ key: 't', does: 'timer' }]
    : waitHint(work);
}

function waitHint({ build, at }: Work): readonly KeyHint[] {
  const waiting = build.progress.timers.some(timer => !isUp(timer, at.nowMs));
  return waiting ? [{ key: 't', does: 'timers' }] : [];
}

function cautionHint({ step }: Work): readonly KeyHint[] {
  return step.care.length > 0 ? [{ key: 'c', does: 'cautions' }] : [];
}

function alwaysHints({ build }: Work): readonly KeyHint[] {
  return [
    { key: '?', does: 'all keys' },
    { key: 'u', does: 'undo' },
    ...(build.plan.time.people === 1 ? [] : [{ key: 'h', does: 'helper' }]),
    { key: 'p', does: 'pause' },
  ];
}

/** The keys of so many lines: `1`, `1-4`. */
export function numberKeys(count: number): string {
  return count < 2 ? '1' : `1-${Math.min(9, count)}`;
}

const CAN_GO_WRONG: readonly Phase[] = ['cut', 'notch', 'dry-fit', 'assemble', 'finish', 'place'];

const COUNT: KeyHint = { key: '+ -', does: 'count' };
const MEASURE: KeyHint = { key: 's', does: 'tape' };
const DAY: KeyHint = { key: 'y', does: 'the day' };
const PLAN: KeyHint = { key: 'b', does: 'plan, lists' };
const WHY: KeyHint = { key: 'w', does: 'why' };
const BEFORE: KeyHint = { key: 'backspace', does: 'step before' };
const LIST: KeyHint = { key: 'l', does: 'list of steps' };
const MISTAKE: KeyHint = { key: 'm', does: 'mistake' };
const PICTURE: KeyHint = { key: 'v', does: 'picture' };
const SCROLL: KeyHint = { key: 'up/down', does: 'scroll' };

const REST: readonly KeyHint[] = [
  LIST,
  PICTURE,
  WHY,
  { key: 'h', does: 'helper' },
  { key: 'g', does: 'all words of the trade' },
  { key: 'n', does: 'a note about the step' },
  COUNT,
  { key: '1-9', does: 'tick the check of that number' },
  MEASURE,
  MISTAKE,
  { key: 't', does: 'timers' },
  { key: 'c', does: 'cautions' },
  { key: 'd', does: 'done anyway' },
  PLAN,
  BEFORE,
  { key: 'right', does: 'look ahead' },
  SCROLL,
  { key: 'esc', does: 'leave' },
];

function bigKeyDoes(move: Move): string {
  if (move.kind === 'brief' && isSignedOffHere(move)) return 'signed off';
  return move.kind === 'wait' && move.begins ? 'what meanwhile' : BIG_KEY[move.kind];
}

function isSignedOffHere({ page }: Briefing): boolean {
  return page.kind !== 'read' && page.kind !== 'heed';
}

const BIG_KEY: Readonly<Record<Move['kind'], string>> = {
  brief: 'understood',
  count: 'one more',
  check: 'right',
  'start-timer': 'start timer',
  wait: 'wait',
  'measure-first': 'measure it',
  'tell-day': 'the day',
  'not-today': 'what instead',
  finish: 'done, next',
  'go-on': 'next',
};
