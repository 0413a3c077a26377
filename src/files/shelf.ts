import type { Workbook } from '../workbook/workbook.js';
import type { SaveOutcome } from './keep.js';

/** What a list of builds tells without making a plan. */
export type Ahead = {
  readonly stepsInAll: number;
  /** Title of the step that comes next; empty when all are done. */
  readonly next: string;
};

/** A build in the list. */
export type ShelfEntry = {
  readonly id: string;
  readonly name: string;
  readonly recipe: string;
  readonly example: boolean;
  /** Put away: told of only where all builds are. */
  readonly putAway: boolean;
  /** Something was made at a step: a piece, a check, a wait that began. */
  readonly begun: boolean;
  readonly stepsDone: number;
  readonly stepsInAll: number;
  readonly next?: string;
  readonly savedAtMs: number;
  readonly timers: readonly {
    readonly name: string;
    readonly endsAtMs: number;
    readonly then: string;
  }[];
  /** Why it can't be opened, where it can't. */
  readonly trouble?: string;
};

export type Opened =
  | {
      readonly ok: true;
      readonly workbook: Workbook;
      /** To be told before going on: a damaged file, a folder that may only be read. */
      readonly notice: string | undefined;
    }
  | { readonly ok: false; readonly why: OpenProblem; readonly words: string };

/** `held`: open in another Notchbook; `takeOver` opens it all the same. */
export type OpenProblem = 'held' | 'missing' | 'damaged' | 'newer' | 'refused';

/** What can be changed of a build without going on with it. */
export type Label = { readonly name: string; readonly putAway: boolean };

/** Where builds are kept. Nothing of it throws for what a disk or a person does. */
export type Shelf = {
  /** All builds, the one saved last at the front. */
  readonly list: () => readonly ShelfEntry[];
  /** Opens a build for this session. */
  readonly load: (id: string) => Opened;
  /** What is on disk just now, without opening it: another session may have it open. */
  readonly look: (id: string) => Opened;
  /** The same as `load` where another session has it: that one can't save from then on. */
  readonly takeOver: (id: string) => Opened;
  /** A new build's first save; refused where its id is taken. Until it worked, nothing is open. */
  readonly create: (workbook: Workbook, ahead: Ahead) => SaveOutcome;
  /** Saves a build that is open. Whatever went wrong, calling it again tries again. */
  readonly save: (workbook: Workbook, ahead: Ahead) => SaveOutcome;
  /** Another name, put away, brought back: for a build that nobody has open. */
  readonly relabel: (id: string, label: Label) => SaveOutcome;
  /** Closes one build of this session, so that others may open it. */
  readonly close: (id: string) => void;
  /** Closes all builds of this session, so that others may open them. */
  readonly release: () => void;
};
