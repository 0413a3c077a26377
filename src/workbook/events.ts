import type { Minutes } from '../measure/quantities.js';

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
  | {
      readonly kind: 'note-written';
      readonly atMs: number;
      readonly step: string;
      readonly text: string;
    }
  | { readonly kind: 'paused'; readonly atMs: number; readonly step: string; readonly note: string }
  | { readonly kind: 'resumed'; readonly atMs: number }
  | { readonly kind: 'briefed'; readonly atMs: number; readonly caution: string }
  /** The last thing that can be taken back is taken back. */
  | { readonly kind: 'taken-back'; readonly atMs: number };
