import type { Minutes, Mm } from '../measure/quantities.js';
import type { DayWork, Weather } from '../plan/told-day.js';

import type { MeasureEvent } from './measure-events.js';

/** What went wrong with a piece that has to be cut again. */
export type SlipKind = 'short' | 'wrong-side' | 'split' | 'other';

/** Everything that can happen to a build, in the past tense. The journal of them is what is saved. */
export type Event =
  | { readonly kind: 'build-started'; readonly atMs: number }
  | {
      readonly kind: 'piece-done';
      readonly atMs: number;
      readonly step: string;
      readonly count: number;
    }
  | {
      readonly kind: 'check-made';
      readonly atMs: number;
      readonly step: string;
      readonly check: number;
    }
  | { readonly kind: 'step-done'; readonly atMs: number; readonly step: string }
  /** Somebody went on to this step to work there; looking around leaves no entry. */
  | { readonly kind: 'step-visited'; readonly atMs: number; readonly step: string }
  | {
      readonly kind: 'timer-started';
      readonly atMs: number;
      readonly timer: string;
      readonly name: string;
      readonly lastsMinutes: Minutes;
      readonly then: string;
      readonly step: string;
    }
  | { readonly kind: 'timer-silenced'; readonly atMs: number; readonly timer: string }
  | { readonly kind: 'timer-stopped'; readonly atMs: number; readonly timer: string }
  /** Its time is up, and it is to ring again then. */
  | {
      readonly kind: 'timer-snoozed';
      readonly atMs: number;
      readonly timer: string;
      readonly untilMs: number;
    }
  /** What the day is like where it is glued or sealed; fields that nobody could tell are left out. */
  | ({ readonly kind: 'day-told'; readonly atMs: number; readonly work: DayWork } & Weather)
  /** The wall clock of this computer was set back by so much: waits under way are moved with it. */
  | { readonly kind: 'clock-set-back'; readonly atMs: number; readonly byMs: number }
  | {
      readonly kind: 'note-written';
      readonly atMs: number;
      readonly step: string;
      readonly text: string;
    }
  | { readonly kind: 'paused'; readonly atMs: number; readonly step: string; readonly note: string }
  | { readonly kind: 'resumed'; readonly atMs: number }
  /** Rags with oil on them were laid out flat or drowned. */
  | { readonly kind: 'rags-laid'; readonly atMs: number }
  | { readonly kind: 'briefed'; readonly atMs: number; readonly caution: string }
  /** The helper answered for these tools, and the lead signed it off. */
  | { readonly kind: 'tools-briefed'; readonly atMs: number; readonly tools: readonly string[] }
  /** What the helper brings along from earlier builds. */
  | {
      readonly kind: 'helper-came';
      readonly atMs: number;
      /** When each tool was last signed off. */
      readonly tools: readonly { readonly tool: string; readonly atMs: number }[];
      /** Steps done so far, in all builds. */
      readonly alone: number;
      readonly together: number;
    }
  /** Another helper: nothing that was told before counts for this one. */
  | { readonly kind: 'helper-changed'; readonly atMs: number }
  | MeasureEvent
  /** A cut piece is lost for its place; its step has one more to cut. */
  | {
      readonly kind: 'piece-spoiled';
      readonly atMs: number;
      /** The step that cut it, the board it was cut from, the mark it had. */
      readonly step: string;
      readonly section: string;
      readonly mark: string;
      readonly what: SlipKind;
      /** Length of sound wood left of it; 0 for none. */
      readonly left: Mm;
      /** Pieces of that step that are good after it. */
      readonly good: number;
      /** What the new one is cut from, in words for the bench. */
      readonly then: string;
      /** What has to be bought for it, in words; empty where nothing is. */
      readonly buy: string;
    }
  /** Boards that came to the rack after the plan was made. */
  | {
      readonly kind: 'board-added';
      readonly atMs: number;
      readonly section: string;
      readonly length: Mm;
      readonly count: number;
    }
  /** A board of the rack is bad from a to b; what was to be cut from it is planned anew. */
  | {
      readonly kind: 'board-spoiled';
      readonly atMs: number;
      readonly section: string;
      /** Its place on the rack of its section, from 0, and what it was called there. */
      readonly place: number;
      readonly board: string;
      /** From the end that is cut first. */
      readonly from: Mm;
      readonly to: Mm;
      /** Where its pieces come from now, and what has to be bought for them, in words. */
      readonly then: string;
      readonly buy: string;
    }
  /** The last thing that can be taken back is taken back. */
  | { readonly kind: 'taken-back'; readonly atMs: number };
