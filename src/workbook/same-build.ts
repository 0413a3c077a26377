import type { Workbook } from './workbook.js';

/** How the copy of a build that comes in stands to the one that is here. */
export type Meeting = 'another build' | 'same' | 'further on' | 'behind' | 'parted';

/**
 * Two builds with one id: are they one, and which journal goes on from the other? Where both went on
 * after they were copied they have parted, and neither may take the other's place.
 */
export function meetingOf(incoming: Workbook, here: Workbook): Meeting {
  if (incoming.id !== here.id || incoming.createdAtMs !== here.createdAtMs) return 'another build';
  const common = Math.min(incoming.events.length, here.events.length);
  const journal = ({ events }: Workbook) => JSON.stringify(events.slice(0, common));
  if (journal(incoming) !== journal(here)) return 'parted';
  if (incoming.events.length === here.events.length) return 'same';
  return incoming.events.length > here.events.length ? 'further on' : 'behind';
}
