import type { Mm } from '../../../measure/quantities.js';
import { adviceOn, adviceOnAdded } from '../../../plan/advice.js';
import {
  addedLines,
  addedVerdict,
  adviceLines,
  buyWords,
  newCutWords,
  verdictWords,
} from '../../../plan/advice-words.js';
import { shortPiece } from '../../../plan/short-piece.js';
import { allAlikeLines } from '../../../plan/short-words.js';
import { goodPieces } from '../../../plan/work-so-far.js';
import type { Event, SlipKind } from '../../../workbook/events.js';
import { advance } from '../../../workbook/progress.js';
import { benchOf } from '../../bench-of.js';
import type { Build } from '../../screen.js';
import type { PieceChoice } from './choices.js';
import { answerToShort } from './short-answer.js';

/** What is said to somebody who stands there, and what is written down if it is taken. */
export type Answer = {
  readonly verdict: string;
  readonly lines: readonly string[];
  /** Nothing where nothing was lost. */
  readonly event: Event | undefined;
  /** Id of the rule page about such a slip, if there is one. */
  readonly page: string | undefined;
};

const PAGES: Readonly<Record<SlipKind, string>> = {
  short: 'cut-short',
  'wrong-side': 'wrong-side',
  split: 'split-end',
  other: 'mirrored',
};

export type Slip = {
  readonly choice: PieceChoice;
  readonly what: SlipKind;
  /** Length of sound wood that is left. */
  readonly left: Mm;
};

/** Worked out on the boards that are left, without writing anything down. */
export function answerTo(slip: Slip, build: Build, nowMs: number): Answer {
  const { choice, what, left } = slip;
  const { cutting, row, isCounted } = choice;
  const { display } = build.plan;
  const short = what === 'short' && left > 0 ? shortPiece(row, left, build.plan) : undefined;
  if (short?.isGood) return answerToShort(short, choice, build, nowMs);
  const event = {
    kind: 'piece-spoiled',
    atMs: nowMs,
    step: cutting.step.id,
    section: row.section,
    mark: row.mark,
    what,
    left,
    good: goodPieces(cutting, build.progress) - (isCounted ? 1 : 0),
    then: '',
    buy: '',
  } as const;
  const work = advance(build.progress, event);
  const spoiled = work.rackChanges.at(-1);
  const advice =
    spoiled?.kind === 'spoiled' ? adviceOn(spoiled, { ...benchOf(build), work }) : undefined;
  if (advice === undefined) throw new Error(`no boards were planned for ${row.mark}`);
  const then = newCutWords(advice, display);
  return {
    verdict: verdictWords(advice, display),
    lines: [
      ...adviceLines(advice, display),
      ...(short === undefined ? [] : allAlikeLines(short, row, display)),
    ],
    event:
      advice.fits === 'nothing-to-do'
        ? undefined
        : { ...event, then, buy: buyWords(advice, display) },
    page: PAGES[what],
  };
}

export type CameBoard = { readonly section: string; readonly length: Mm };

/** The same for a board that came to the rack. */
export function answerToBoard({ section, length }: CameBoard, build: Build, nowMs: number): Answer {
  const { display } = build.plan;
  const event = { kind: 'board-added', atMs: nowMs, section, length, count: 1 } as const;
  const work = advance(build.progress, event);
  const added = work.rackChanges.at(-1);
  const outcome =
    added?.kind === 'added' ? adviceOnAdded(added, { ...benchOf(build), work }) : undefined;
  if (outcome === undefined) throw new Error(`no boards were planned of ${section}`);
  return {
    verdict: addedVerdict(outcome, display),
    lines: addedLines(outcome, display),
    event,
    page: undefined,
  };
}
