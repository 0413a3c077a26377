import type { ReactNode } from 'react';
import type { Display } from '../measure/quantities.js';
import type { Plan } from '../plan/plan.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import type { Event } from '../workbook/events.js';
import type { Progress, Workbook } from '../workbook/workbook.js';

/** One key as the whole program sees it: the key layer has undone batches, pastes and odd codes. */
export type Key =
  | { readonly name: 'enter' | 'escape' | 'tab' | 'backspace' | 'space' }
  | { readonly name: 'up' | 'down' | 'left' | 'right' | 'home' | 'end' | 'page-up' | 'page-down' }
  /** Everything typed in a line goes: Ctrl-U. */
  | { readonly name: 'clear' }
  /** One printable character, space excepted. */
  | { readonly name: 'character'; readonly text: string }
  /** From a menu in the view: the line that was taken. */
  | { readonly name: 'chosen'; readonly id: string }
  /** From a text line in the view: what it holds now. */
  | { readonly name: 'typed'; readonly text: string };

export type Size = { readonly columns: number; readonly rows: number };

/** A build that is open: what is saved, and what follows from it. */
export type Build = {
  readonly workbook: Workbook;
  readonly recipe: Recipe;
  readonly plan: Plan;
  readonly progress: Progress;
};

/** A line on the home screen. */
export type ShelfLine = {
  readonly id: string;
  readonly name: string;
  readonly recipe: string;
  readonly example: boolean;
  readonly putAway: boolean;
  /** Something was made at a step: a piece, a check, a wait that began. */
  readonly begun: boolean;
  readonly stepsDone: number;
  readonly stepsInAll: number;
  readonly savedAtMs: number;
  /** Title of the step that comes next. */
  readonly next?: string;
  /** Running timers, when they end, and what to do then. */
  readonly timers: readonly {
    readonly name: string;
    readonly endsAtMs: number;
    readonly then: string;
  }[];
  /** Why it can't be opened, where it can't. */
  readonly trouble?: string;
};

/** What every screen may look at besides its own state. */
export type Context = {
  /** The room that the screen's own view has: the frame less head and foot. */
  readonly size: Size;
  readonly nowMs: number;
  readonly display: Display;
  /** Plain ASCII instead of line-drawing characters. */
  readonly ascii: boolean;
  /** Read when first asked for: the home screen opens without them. */
  readonly recipes: () => readonly Recipe[];
  readonly shelf: readonly ShelfLine[];
  readonly build: Build | undefined;
  /** Another window works on the build: here it is only looked at. */
  readonly looking: boolean;
  /** What the interview is about, from the moment it was asked for. */
  readonly interview: Interview | undefined;
  /** Id of the step that is seen at the bench, on this screen or on the one beneath it. */
  readonly stepSeen: string | undefined;
  /** The screen that one would come back to: its title and its keys, for the page of keys. */
  readonly under: { readonly title: string; readonly hints: readonly KeyHint[] } | undefined;
};

/** A recipe to be asked about, and the answers that are known before the first question. */
export type Interview = {
  readonly recipe: Recipe;
  readonly answers: Answers;
  /** The build that the answers are from. */
  readonly from?: string;
};

/** What a screen asks of the program; the reducer does nothing itself. */
export type Ask =
  | { readonly kind: 'go'; readonly to: ScreenName }
  /** To the screen one came from. */
  | { readonly kind: 'leave' }
  | { readonly kind: 'begin-interview'; readonly recipe: string; readonly answers?: Answers }
  | {
      readonly kind: 'start-build';
      readonly recipe: string;
      readonly name: string;
      readonly answers: Answers;
    }
  | { readonly kind: 'open-build'; readonly id: string }
  /** Answers of one build as the beginning of the next. */
  | { readonly kind: 'build-alike'; readonly id: string }
  | {
      readonly kind: 'relabel';
      readonly id: string;
      readonly name: string;
      readonly putAway: boolean;
    }
  | { readonly kind: 'carry'; readonly id: string }
  | { readonly kind: 'open-example' }
  /** Written to disk before anything of it is shown. */
  | { readonly kind: 'record'; readonly events: readonly Event[] }
  | { readonly kind: 'quit' };

export type ScreenName =
  | 'home'
  | 'interview'
  | 'plan'
  | 'step'
  | 'timers'
  | 'pause'
  | 'resume'
  | 'mistake'
  | 'measure'
  | 'day'
  | 'keys';

export type Outcome<State> = { readonly state: State; readonly asks: readonly Ask[] };

export type KeyHint = {
  readonly key: string;
  readonly does: string;
  /** Whether it stands in the last row at every turn, or on the page of keys only. */
  readonly place?: 'always' | 'more';
};

/** A screen: state, what a key does to it, what it looks like, which keys work now. */
export type Screen<State> = {
  readonly name: ScreenName;
  /** Shown in the head line. */
  readonly title: (state: State, at: Context) => string;
  readonly open: (at: Context) => State;
  readonly press: (state: State, key: Key, at: Context) => Outcome<State>;
  readonly view: (props: { readonly state: State; readonly at: Context }) => ReactNode;
  readonly hints: (state: State, at: Context) => readonly KeyHint[];
  /** Id of the step that it shows, where it is the bench. */
  readonly stepSeen?: (state: State, at: Context) => string | undefined;
  /**
   * Which keys the view's own widget takes: a `menu` takes up, down, enter and 1 to 9 and answers with
   * `chosen`; a `text` line takes everything one types and answers with `typed`, then `enter`. The
   * screen's `press` gets the rest.
   */
  readonly widget?: (state: State, at: Context) => Widget | undefined;
  /** Work that may wait until no key has come for a moment; nothing where there is none. */
  readonly settle?: (state: State, at: Context) => State | undefined;
  /** Where enter can't be taken back: a second enter within a quarter second is a bounce. */
  readonly confirms?: (state: State, at: Context) => boolean;
  /**
   * What the big key would do now, as a word that only is another one where it would do something else; nothing
   * where it notes nothing. A press that was typed before this was seen is not taken.
   */
  readonly underThumb?: (state: State, at: Context) => string | undefined;
};

export type Widget = 'menu' | 'text';
