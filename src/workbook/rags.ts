import { COMMON_PRACTICE, type Source } from '../measure/figure.js';
import type { Plan } from '../plan/plan.js';
import type { LeavingLine } from './before-leaving.js';
import type { Event } from './events.js';
import { standingEvents } from './taken-back.js';
import type { Workbook } from './workbook.js';

const RAGS_SOURCE: Source = {
  publication: 'NFPA on oily rags',
  place: 'water-filled metal can with a tight lid',
  standing: 'checked',
};

/** What a builder may know of rags: the plan tells which finish, the journal what was done. */
type Oiled = { readonly workbook: Workbook; readonly plan: Plan };

/** Rags of work since the last session was closed. */
export type Rags =
  | 'none'
  /** Oil or an oil stain was on them, and nobody said that they are seen to. */
  | 'due'
  | 'laid out';

/** How it stands with rags that can burn by themselves: a finish that does not heat up leaves none. */
export function ragsNow(oiled: Oiled): Rags {
  return oiled.plan.sealer.hotRags ? wetRags(oiled) : 'none';
}

/** A coat was worked on, and its rags were laid out after it, or not; whatever the finish is. */
function wetRags({ workbook, plan }: Oiled): Rags {
  const events = standingEvents(workbook.events);
  const closed = events.findLastIndex(({ kind }) => kind === 'paused');
  const oiled = events.findLastIndex(event => isCoat(event, plan));
  if (oiled < 0 || oiled < closed) return 'none';
  const laid = events.findLastIndex(({ kind }) => kind === 'rags-laid');
  return laid > oiled ? 'laid out' : 'due';
}

/** Work on a step that has rags with finish on them. */
function isCoat(event: Event, { steps }: Plan): boolean {
  switch (event.kind) {
    case 'step-done':
    case 'piece-done':
    case 'timer-started': {
      const step = steps.find(({ id }) => id === event.step);
      return step?.care.includes('rags') === true && step.phase === 'finish';
    }
    default:
      return false;
  }
}

/** The line about rags; with a finish that heats up nobody leaves without it. */
export function ragsOf(oiled: Oiled): readonly LeavingLine[] {
  const rags = wetRags(oiled);
  if (rags === 'none') return [];
  const { hotRags } = oiled.plan.sealer;
  return [{ ...(hotRags ? RAGS : COLD_RAGS), must: hotRags, seen: rags === 'laid out' }];
}

/** Told where somebody leaves without a pause. */
export const RAGS_LEFT =
  'Rags with oil on them can catch fire by themselves: flat and single outdoors, or under water in a metal can with a lid. Tick it at p, pause.';

const RAGS: LeavingLine = {
  id: 'rags',
  say: 'Rags, brushes and gloves with oil or stain on them: wet in a metal can full of water with a tight lid, or spread flat, single, outdoors on stone until stiff. Never in a heap, never in the trash, never indoors overnight.',
  why: 'Drying oil makes heat; a crumpled rag can catch fire by itself hours later. The label says what this finish needs.',
  source: RAGS_SOURCE,
};

const COLD_RAGS: LeavingLine = {
  id: 'rags',
  say: 'Brushes washed out before the sealer dries, rags spread out to dry, the lid on the can. Keep them apart from rags with oil or stain.',
  why: 'A water-borne sealer does not heat up as oil does, as far as its kind goes. The label says what this finish needs.',
  source: COMMON_PRACTICE,
};
