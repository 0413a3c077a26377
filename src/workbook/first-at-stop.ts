import type { Event } from './events.js';
import { standingEvents } from './taken-back.js';

/**
 * A piece that was measured first at a stop and came out short stays as short as it is, kept or set aside: the next
 * one measured there is another piece, which is not among those counted until somebody counts it. One that
 * was too long is the same piece again, cut once more.
 */
export function isAnotherAwaited(step: string, events: readonly Event[]): boolean {
  const standing = standingEvents(events);
  const at = standing.findLastIndex(it => it.kind === 'first-measured' && it.step === step);
  const last = standing[at];
  if (last?.kind !== 'first-measured' || last.isRight || last.measured >= last.planned)
    return false;
  const since = standing
    .slice(at)
    .reduce((sum, it) => (it.kind === 'piece-done' && it.step === step ? sum + it.count : sum), 0);
  return since <= 0;
}
