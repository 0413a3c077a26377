import type { Display } from '../measure/quantities.js';
import type { AtBench } from '../plan/as-cut.js';
import type { MadePlan } from '../plan/make-plan.js';
import type { Plan } from '../plan/plan.js';
import type { ToldDay } from '../plan/told-day.js';
import type { Recipe } from '../recipe/recipe.js';
import type { Answers } from '../recipe/values.js';
import type { Workbook } from '../workbook/workbook.js';
import type { Build, Interview, ShelfLine } from './screen.js';

/** A workbook from the shelf with the recipe it keeps, or why it can't be had, as a sentence. */
export type Loaded =
  | {
      readonly ok: true;
      readonly workbook: Workbook;
      readonly recipe: Recipe;
      /** To be told before going on. */
      readonly notice?: string | undefined;
    }
  | {
      readonly ok: false;
      readonly problem: string;
      /** Open in another Notchbook, from which it can be taken over. */
      readonly held?: boolean;
    };

/** Whether a workbook is on disk, read back and whole; else why not, short: `the disk is full`. */
export type SaveResult = { readonly ok: true } | { readonly ok: false; readonly problem: string };

export type Alike =
  | { readonly ok: true; readonly interview: Interview }
  | { readonly ok: false; readonly problem: string };

export type Label = { readonly name: string; readonly putAway: boolean };

export type Carried =
  | { readonly ok: true; readonly file: string }
  | { readonly ok: false; readonly problem: string };

export type NewBuild = {
  readonly recipe: string;
  readonly name: string;
  readonly answers: Answers;
};

/** What the screens can't do themselves: the clock, the disk, the terminal. */
export type Services = {
  /** The wall clock. */
  readonly now: () => number;
  /** A clock that nobody can set, to notice when the wall clock was. */
  readonly steadyMs: () => number;
  readonly list: () => readonly ShelfLine[];
  readonly plan: (recipe: Recipe, answers: Answers, display: Display, bench?: AtBench) => MadePlan;
  /** The plan with its waits on a day that was told. */
  readonly onDay: (plan: Plan, told: ToldDay | undefined) => Plan;
  readonly load: (id: string) => Loaded;
  /** What the interview begins with where the next build is to be like this one. */
  readonly alike: (id: string) => Alike;
  /** As it is on disk just now, to be looked at only. */
  readonly look: (id: string) => Loaded;
  readonly takeOver: (id: string) => Loaded;
  /** Lets others open it. */
  readonly close: (id: string) => void;
  /** Another name, put away or brought back. */
  readonly relabel: (id: string, label: Label) => SaveResult;
  /** The whole build as one file in the folder one works in; says where. */
  readonly carry: (id: string) => Carried;
  readonly example: () => Loaded;
  readonly create: (build: NewBuild) => Loaded;
  readonly save: (build: Build) => SaveResult;
  /** Whether the key at hand was typed before the picture that is seen now was painted. */
  readonly isTypedAhead: () => boolean;
  readonly bell: () => void;
  /** What the window is called. */
  readonly title: (text: string) => void;
  readonly suspend: () => void;
  readonly quit: () => void;
};
