import type { SaveOutcome } from '../../src/files/keep.js';
import type { Ahead, Opened, Shelf, ShelfEntry } from '../../src/files/shelf.js';
import { progressOf } from '../../src/workbook/progress.js';
import { endsAtMs } from '../../src/workbook/timers.js';
import type { Workbook } from '../../src/workbook/workbook.js';

type Stored = {
  readonly workbook: Workbook;
  readonly ahead: Ahead;
  readonly savedAtMs: number;
  readonly rev: number;
};

export type MemoryShelf = Shelf & {
  /** What a save says while this is set: nothing is stored then. */
  refuse: Extract<SaveOutcome, { ok: false }> | undefined;
  /** What is stored under an id, as it would be found at the next start. */
  readonly stored: (id: string) => Workbook | undefined;
};

/** A shelf without a disk, for everything that only needs builds to stay where they are put. */
export function memoryShelf(now: () => number, workbooks: readonly Workbook[] = []): MemoryShelf {
  const kept = new Map<string, Stored>();
  const put = (workbook: Workbook, ahead: Ahead): SaveOutcome => {
    if (shelf.refuse !== undefined) return shelf.refuse;
    const rev = (kept.get(workbook.id)?.rev ?? 0) + 1;
    kept.set(workbook.id, { workbook, ahead, savedAtMs: now(), rev });
    return { ok: true, rev, savedAtMs: now() };
  };
  const load = (id: string): Opened => {
    const stored = kept.get(id);
    if (stored === undefined) return { ok: false, why: 'missing', words: `no build ${id}` };
    return { ok: true, workbook: stored.workbook, notice: undefined };
  };
  const shelf: MemoryShelf = {
    refuse: undefined,
    stored: id => kept.get(id)?.workbook,
    list: () =>
      [...kept.values()].map(entryOf).sort((one, other) => other.savedAtMs - one.savedAtMs),
    load,
    look: load,
    takeOver: load,
    create: put,
    save: put,
    relabel: (id, { name, putAway }) => {
      const stored = kept.get(id);
      if (stored === undefined) return { ok: false, problem: 'other', words: `no build ${id}` };
      const { putAway: _, ...workbook } = stored.workbook;
      return put(putAway ? { ...workbook, name, putAway } : { ...workbook, name }, stored.ahead);
    },
    close: () => {},
    release: () => {},
  };
  for (const workbook of workbooks) put(workbook, { stepsInAll: 0, next: '' });
  return shelf;
}

function entryOf({ workbook, ahead, savedAtMs }: Stored): ShelfEntry {
  const { done, timers } = progressOf(workbook.events);
  const { id, name, recipe, example } = workbook;
  return {
    id,
    name,
    recipe,
    example,
    putAway: workbook.putAway === true,
    begun: done.size > 0,
    stepsDone: Math.min(done.size, ahead.stepsInAll),
    stepsInAll: ahead.stepsInAll,
    ...(ahead.next === '' ? {} : { next: ahead.next }),
    savedAtMs,
    timers: timers
      .filter(timer => !timer.silenced)
      .map(timer => ({ name: timer.name, endsAtMs: endsAtMs(timer), then: timer.then })),
  };
}
