import type { Display, Minutes } from '../measure/quantities.js';
import type { KeptBoards } from '../plan/kept-boards.js';
import type { ToldDays } from '../plan/told-day.js';
import type { AddedBoards, SpoiledBoard, SpoiledPiece } from '../plan/work-so-far.js';
import type { Answers } from '../recipe/values.js';
import type { Event, SlipKind } from './events.js';
import type { Found } from './measure-events.js';

/** One builder's copy of a recipe: what is saved. The rest of a build's state follows from it. */
export type Workbook = {
  readonly id: string;
  /** What the builder calls it. */
  readonly name: string;
  readonly recipe: string;
  /** The recipe as it was when the build began, so that a later one changes nothing underfoot. */
  readonly recipeText: string;
  readonly display: Display;
  readonly answers: Answers;
  /** The boards it began with, by the numbers that are on the wood; builds of older programs have none at first. */
  readonly boards?: KeptBoards | undefined;
  readonly createdAtMs: number;
  readonly events: readonly Event[];
  /** The example that everybody may play with; kept apart from the builder's own. */
  readonly example: boolean;
  /** Put away by its builder: finished, or not gone on with for now. */
  readonly putAway?: true | undefined;
};

/** A timer on the wall clock: what is left is worked out, never counted down. */
export type Timer = {
  readonly id: string;
  readonly name: string;
  readonly step: string;
  readonly startedAtMs: number;
  readonly lastsMinutes: Minutes;
  readonly then: string;
  readonly silenced: boolean;
  /** It rings again then, although its time is up. */
  readonly snoozedUntilMs?: number;
};

/** A piece that was lost, with what was said about it. */
export type Spoiled = SpoiledPiece & {
  readonly atMs: number;
  readonly what: SlipKind;
  readonly then: string;
  readonly buy: string;
};

/** A board that turned out bad, with what was said about it. */
export type BadBoard = SpoiledBoard & {
  readonly atMs: number;
  readonly then: string;
  readonly buy: string;
};

/** What a helper did and was told in earlier builds. */
export type HelperBefore = {
  /** When each tool was last signed off. */
  readonly tools: ReadonlyMap<string, number>;
  readonly alone: number;
  readonly together: number;
};

/** Where a build stands: the fold of its journal. */
export type Progress = {
  readonly started: boolean;
  /** Step ids that are done. */
  readonly done: ReadonlySet<string>;
  /** Pieces done by step id. */
  readonly tallies: ReadonlyMap<string, number>;
  /** Checks made, as `step#number`. */
  readonly checks: ReadonlySet<string>;
  readonly timers: readonly Timer[];
  /** What the day was like when it was last told. */
  readonly days: ToldDays;
  /** Written at work or left at a pause, the oldest first. */
  readonly notes: readonly {
    readonly atMs: number;
    readonly step: string;
    readonly text: string;
  }[];
  /** Cautions that were read aloud. */
  readonly briefed: ReadonlySet<string>;
  /** Tools that the helper was signed off for in this build, and when. */
  readonly toolsBriefed: ReadonlyMap<string, number>;
  /** What the helper brought along; none where nothing is known of earlier builds. */
  readonly helperBefore: HelperBefore | undefined;
  /** What was measured, and what was cut by then. */
  readonly found: Found;
  /** What changed on the rack besides the cuts of the plan, in order. */
  readonly rackChanges: readonly (Spoiled | AddedBoards | BadBoard)[];
  readonly paused:
    | { readonly atMs: number; readonly step: string; readonly note: string }
    | undefined;
  /** Where somebody last worked; looking around and notes move nothing. */
  readonly lastStep: string | undefined;
  readonly lastAtMs: number | undefined;
  readonly workedMs: number;
};
