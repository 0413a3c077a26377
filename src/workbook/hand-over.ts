import { DAY_MS } from '../measure/spans.js';
import type { CareDays } from '../plan/pages/care-sheet-page.js';
import type { Plan } from '../plan/plan.js';
import { dayWords, monthWords } from './clock-words.js';
import type { Event } from './events.js';
import { standingEvents } from './taken-back.js';

/** Common practice: after four weeks new wood has settled. */
export const SETTLED_DAYS = 28;
const YEAR_DAYS = 365.25;

/** When the piece was handed over: the newest step done of that kind; none before. */
export function handedOverAtMs(events: readonly Event[], { steps }: Plan): number | undefined {
  const isHandOver = (id: string) => steps.find(step => step.id === id)?.phase === 'hand-over';
  return standingEvents(events).findLast(
    event => event.kind === 'step-done' && isHandOver(event.step),
  )?.atMs;
}

/** When the last coat went on: the newest work on a step that seals; none before. */
export function sealedAtMs(events: readonly Event[], { steps }: Plan): number | undefined {
  const seals = (id: string) => steps.some(step => step.id === id && step.care.includes('sealer'));
  return standingEvents(events).findLast(
    event => (event.kind === 'step-done' || event.kind === 'timer-started') && seals(event.step),
  )?.atMs;
}

/** The days of the care sheet, counted from the hand-over; none before it. */
export function careDays(
  events: readonly Event[],
  plan: Plan,
  zone?: string,
): CareDays | undefined {
  const handedOver = handedOverAtMs(events, plan);
  if (handedOver === undefined) return undefined;
  const sealed = sealedAtMs(events, plan) ?? handedOver;
  const { from, to } = plan.sealer.lasts;
  const years = (count: number) => monthWords(sealed + count * YEAR_DAYS * DAY_MS, zone);
  return {
    handedOver: dayWords(handedOver, zone),
    tighten: dayWords(handedOver + SETTLED_DAYS * DAY_MS, zone),
    sealFrom: years(from),
    sealBy: years(to),
  };
}
