/** Counted steps in place of seconds: the same problem stops at the same place on every machine. */
export type Work = { done: number; limit: number };

/** Books steps, roughly one for each number touched. */
export function spend(work: Work, steps: number): void {
  work.done += steps;
}

/** True once the limit is reached; a search then ends with what it has. */
export function isSpent(work: Work): boolean {
  return work.done >= work.limit;
}
