import type { Event } from './events.js';
import type { Workbook } from './workbook.js';

/** What a build begins with; the rest is its journal. */
export type Beginning = Omit<Workbook, 'createdAtMs' | 'events'> & { readonly nowMs: number };

/** A new build whose journal holds one entry: that it was started. */
export function startWorkbook({ nowMs, ...beginning }: Beginning): Workbook {
  return {
    ...beginning,
    createdAtMs: nowMs,
    events: [{ kind: 'build-started', atMs: nowMs }],
  };
}

/** The workbook with one more entry in its journal; the given one stays as it is. */
export function record(workbook: Workbook, event: Event): Workbook {
  return { ...workbook, events: [...workbook.events, event] };
}
