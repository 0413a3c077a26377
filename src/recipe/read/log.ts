import type { Place } from '../place.js';
import type { Problem, ProblemKind } from '../problem.js';

/** More than this at once helps nobody, and a broken file can have thousands. */
const MOST = 200;

/** Gathers what is wrong while a file is read, so that an author hears of all of it at once. */
export class Log {
  private readonly found: Problem[] = [];

  /** Notes a problem; gives undefined, which every reader gives for what it could not read. */
  say(kind: ProblemKind, at: Place): undefined {
    this.add({ kind, at });
  }

  add(problem: Problem): undefined {
    if (this.found.length < MOST) this.found.push(problem);
  }

  /** In the order of the file. */
  get problems(): readonly Problem[] {
    return this.found.toSorted((a, b) => a.at.line - b.at.line || a.at.column - b.at.column);
  }
}
