import { formatMinutes } from '../measure/duration.js';
import { MINUTE_MS } from '../measure/spans.js';
import type { Event } from '../workbook/events.js';
import type { Build } from './screen.js';

/** Moves running waits with a clock that was set back by so many ms, and says so. */
export type SetBack = { readonly events: readonly Event[]; readonly notice: string };

/** The clock was set back while the program ran: how far is known, so waits end when they should. */
export function setBackNow(byMs: number, nowMs: number): SetBack {
  const by = formatMinutes(Math.max(1, byMs / MINUTE_MS));
  return {
    events: [{ kind: 'clock-set-back', atMs: nowMs, byMs }],
    notice: `The clock of this computer was set back by ${by}. Running waits were moved with it; check glue and sealer against a watch.`,
  };
}

/** Time servers nudge a clock by less than this. */
const NUDGE_MS = MINUTE_MS;

/**
 * The journal holds entries of a time that is still to come: the clock was set back while nobody looked, nobody knows
 * how far. Waits are moved so that none is cut short and none is longer than it began.
 */
export function setBackMeanwhile({ progress }: Build, nowMs: number): SetBack | undefined {
  const byMs = (progress.lastAtMs ?? nowMs) - nowMs;
  if (byMs <= NUDGE_MS) return undefined;
  return {
    events: [{ kind: 'clock-set-back', atMs: nowMs, byMs }],
    notice: `The clock of this computer stands ${formatMinutes(byMs / MINUTE_MS)} before the last entry. Nothing is lost; running waits may ring late, none rings early.`,
  };
}
