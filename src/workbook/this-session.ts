import type { Event } from './events.js';

/** What happened since the builder last sat down to it: from the last start or return on. */
export function thisSession(events: readonly Event[]): readonly Event[] {
  const opened = events.findLastIndex(({ kind }) => kind === 'build-started' || kind === 'resumed');
  return events.slice(Math.max(0, opened));
}
