import { MINUTE_MS } from '../measure/spans.js';
import type { Event } from './events.js';
import type { Progress } from './workbook.js';

/**
 * A longer silence between two entries is taken for time away from the bench, and none of it counts:
 * nobody says "I am off" every time. A judgment of ours, not a published figure.
 */
const LONGEST_SILENCE_MINUTES = 90;

export type Stretch = Pick<Progress, 'workedMs' | 'lastAtMs' | 'paused'>;

/**
 * Time worked up to and with this entry, in ms. A silence counts whole up to 90 min and not at all
 * beyond; time between `paused` and `resumed` does not count, nor does a clock that was set back.
 * Entries at 14:00, 14:40 and 19:00 make 40 min.
 */
export function workedUntil(event: Event, { workedMs, lastAtMs, paused }: Stretch): number {
  if (lastAtMs === undefined || paused !== undefined) return workedMs;
  const silence = event.atMs - lastAtMs;
  const counts = silence > 0 && silence <= LONGEST_SILENCE_MINUTES * MINUTE_MS;
  return counts ? workedMs + silence : workedMs;
}
