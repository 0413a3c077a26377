import { helperStore } from '../files/helper-file.js';
import type { Event } from '../workbook/events.js';
import { buildKey, helperCame, type LearnedFrom, learnedIn } from '../workbook/learned.js';

/** What a build has to do with the helper of earlier and later ones. */
export type HelperServices = {
  /** For the journal of a new build: what the helper brings along. */
  readonly came: () => readonly Event[];
  /** Keeps what was learned in a build, once that build is on disk. */
  readonly keep: (build: LearnedFrom) => void;
};

/**
 * Keeps it in the data folder. The build itself is what counts: a helper file that can't be written
 * stops nobody, and is tried again with the next change.
 */
export function helperServices(folder: string, now: () => number): HelperServices {
  const store = helperStore(folder, now);
  return {
    came: () => {
      const came = helperCame(store.known(), now());
      return came === undefined ? [] : [came];
    },
    keep: build => {
      const { workbook } = build;
      if (!workbook.example) store.keep(buildKey(workbook), learnedIn(build));
    },
  };
}
