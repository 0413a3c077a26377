import type { Ahead } from '../../src/files/shelf.js';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { COMMON_PRACTICE } from '../../src/measure/figure.js';
import type { Step } from '../../src/plan/plan.js';
import type { Event } from '../../src/workbook/events.js';
import type { Workbook } from '../../src/workbook/workbook.js';

/** What a list tells of a build with so many steps. */
export function ahead(stepsInAll: number, next = 'Cut 24 at 18 in'): Ahead {
  return { stepsInAll, next };
}

/** Tuesday, November 24, 2026, 14:00 in Greenwich: `date -u -d @1795528800`. */
export const TUESDAY_14 = 1_795_528_800_000;
export const MINUTE = 60_000;
export const HOUR = 60 * MINUTE;

/** A step of a plan in which only what a test is about is filled in. */
export function step(id: string, about: Partial<Step> = {}): Step {
  return {
    id,
    phase: 'cut',
    title: id,
    who: 'both',
    handsOff: [],
    tools: [],
    plain: [],
    say: [],
    firstCheck: false,
    after: [],
    needs: [],
    why: '',
    look: [],
    care: [],
    settings: [],
    timers: [],
    bright: [],
    standing: [],
    joins: [],
    minutes: { value: 10, unit: 'min', because: 'made up', source: COMMON_PRACTICE },
    ...about,
  };
}

/** A build with this journal. */
export function build(events: readonly Event[], about: Partial<Workbook> = {}): Workbook {
  return {
    id: 'garden-bench',
    name: 'Garden bench',
    recipe: 'planter-bench',
    recipeText: 'recipe: 1',
    display: SIXTEENTHS,
    answers: {},
    createdAtMs: TUESDAY_14,
    events,
    example: false,
    ...about,
  };
}

/** Clamps put on at a moment, for so many minutes. */
export function clampsOn(atMs: number, lastsMinutes: number, about = {}) {
  return {
    kind: 'timer-started',
    atMs,
    timer: 'end-corners/clamp',
    name: 'Clamps on the end panels',
    lastsMinutes,
    then: 'Take the clamps off.',
    step: 'end-corners',
    ...about,
  } as const;
}
