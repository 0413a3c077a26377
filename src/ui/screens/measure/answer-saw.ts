import { formatLength } from '../../../measure/format-length.js';
import type { Mm } from '../../../measure/quantities.js';
import { firstPiece, stopWords } from '../../../plan/first-piece.js';
import { frameVerdict } from '../../../plan/frame-square.js';
import { finer } from '../../../plan/readings.js';
import type { SquareRow } from '../../../plan/squares.js';
import { type CutStep, goodPieces, marksInOrder } from '../../../plan/work-so-far.js';
import type { Event } from '../../../workbook/events.js';
import { isAnotherAwaited } from '../../../workbook/first-at-stop.js';
import type { Build } from '../../screen.js';
import { answerTo } from '../mistake/answer.js';
import { stepAtHand } from '../step/shown-step.js';
import type { Answer, Bench } from './state.js';

/** The first piece at a stop: right, or which way the stop has to go and what the piece is good for. */
export function answerToFirst(cutting: CutStep, measured: Mm, build: Build, nowMs: number): Answer {
  const { display } = build.plan;
  const planned = cutting.length;
  const first = firstPiece(planned, measured);
  const lines = stopWords(first, planned, display);
  const counted = isCounted(cutting, build) ? [] : [pieceOf(cutting, nowMs)];
  const event: Event = {
    kind: 'first-measured',
    atMs: nowMs,
    step: cutting.step.id,
    planned,
    measured,
    isRight: first.is === 'right',
    ticks: first.is === 'right' && cutting.step.firstCheck,
  };
  const by = formatLength(first.by, finer(display));
  const atStop = { title: 'At the saw', lines };
  if (first.is === 'right') {
    const verdict = `${formatLength(measured, finer(display))}: right.`;
    return { verdict, blocks: [atStop], take: [...counted, event], does: 'right, go on' };
  }
  if (first.is === 'long') {
    return {
      verdict: `${by} too long.`,
      blocks: [atStop],
      take: [event],
      does: 'the stop is moved, cut again',
    };
  }
  const aside = asideOf(cutting, measured, build, nowMs);
  const short = { title: 'The short piece', lines: aside.lines };
  if (!aside.isLost) {
    return {
      verdict: `${by} too short.`,
      blocks: [atStop, short],
      take: [...counted, event, ...aside.events],
      does: 'keep it, the stop is moved',
    };
  }
  const keep = { does: 'keep the piece as it is', events: [...counted, event] };
  return {
    verdict: `${by} too short.`,
    blocks: [atStop, short],
    take: [event, ...aside.events],
    does: 'set it aside, cut another',
    leave: keep,
  };
}

type Aside = {
  readonly lines: readonly string[];
  readonly events: readonly Event[];
  /** It can't take its place: another one is cut. */
  readonly isLost: boolean;
};

/** Is the piece on the tape among those counted? Where all are, it is. */
function isCounted(cutting: CutStep, { progress, workbook }: Build): boolean {
  const good = goodPieces(cutting, progress);
  if (good === cutting.rows.length) return true;
  return good > 0 && !isAnotherAwaited(cutting.step.id, workbook.events);
}

function pieceOf({ step }: CutStep, atMs: number): Event {
  return { kind: 'piece-done', atMs, step: step.id, count: 1 };
}

/** What a short piece is good for, and where the new one comes from if it is lost for its place. */
function asideOf(cutting: CutStep, left: Mm, build: Build, nowMs: number): Aside {
  const counted = isCounted(cutting, build);
  const place = goodPieces(cutting, build.progress) - (counted ? 1 : 0);
  const mark = marksInOrder(cutting, build.progress)[place];
  const row = cutting.rows.find(it => it.mark === mark);
  const isPlanned = build.plan.purchases.some(({ section }) => section === cutting.section);
  if (row === undefined || !isPlanned)
    return { lines: ['Keep it for a shorter piece.'], events: [], isLost: true };
  const choice = { kind: 'piece', cutting, row, isCounted: counted } as const;
  const { verdict, lines, event } = answerTo({ choice, what: 'short', left }, build, nowMs);
  const events = event === undefined ? [] : [event];
  return { lines: [verdict, ...lines], events, isLost: event?.kind === 'piece-spoiled' };
}

/** Both diagonals of a frame: near enough, or how far to push and which way. */
export function answerToDiagonals(
  frame: SquareRow,
  [one, other]: readonly [Mm, Mm],
  { build, at }: Bench,
): Answer {
  const step = stepAtHand(build, at)?.id ?? frame.step;
  const long = frame.long.value;
  const wide = frame.wide.value;
  const { isSquare, verdict, lines } = frameVerdict(
    { length: long, width: wide, one, other },
    build.plan.display,
  );
  const number = 1 + build.progress.found.readings.filter(it => isSameFrame(it, step, long)).length;
  const about = { atMs: at.nowMs, step, number, long, wide, one, other };
  return {
    verdict,
    blocks: [{ title: isSquare ? 'Diagonals' : 'What to do', lines }],
    take: [{ kind: 'diagonals-measured', ...about }],
    does: 'write it down, back to the step',
  };
}

type Reading = Build['progress']['found']['readings'][number];

function isSameFrame(reading: Reading, step: string, long: Mm): boolean {
  return reading.kind === 'diagonals-measured' && reading.step === step && reading.long === long;
}
