import { describe, expect, test } from 'vitest';
import { freeWork, meanwhile } from '../../../src/ui/screens/timers/meanwhile.js';
import { timersScreen } from '../../../src/ui/screens/timers/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import {
  buildAfter,
  contextWith,
  MINUTE_MS,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { smallPlan } from '../../support/small-plan.js';

function started(timer: string, name: string, lastsMinutes: number): Event {
  const step = timer.split('/')[0] ?? '';
  return {
    kind: 'timer-started',
    atMs: TUESDAY_MS,
    timer,
    name,
    lastsMinutes,
    then: 'Look.',
    step,
  };
}

const TWO: readonly Event[] = [
  started('seal/dry', 'Sealer drying', 1440),
  started('ends/clamp', 'Clamps', 30),
];

function used(minutes: number) {
  return usedWith(timersScreen, contextWith(buildAfter(TWO))).wait(minutes * MINUTE_MS);
}

describe('keys among the timers', () => {
  test('the one that ends first stands first, and space says that it was heard', () => {
    expect(used(31).press('space').asks).toEqual([
      {
        kind: 'record',
        events: [
          { kind: 'timer-silenced', atMs: TUESDAY_MS + 31 * MINUTE_MS, timer: 'ends/clamp' },
        ],
      },
    ]);
  });

  test('where nothing rings, space goes back', () => {
    expect(used(5).press('space').asks).toEqual([{ kind: 'leave' }]);
  });

  test('a timer is stopped only when it is asked for twice', () => {
    const screen = used(5).press('down').press('x');
    expect(screen.asks).toEqual([]);
    expect(screen.press('x').asks).toEqual([
      {
        kind: 'record',
        events: [{ kind: 'timer-stopped', atMs: TUESDAY_MS + 5 * MINUTE_MS, timer: 'seal/dry' }],
      },
    ]);
  });

  test('any other key lets it run', () => {
    expect(used(5).press('x').press('space').asks).toEqual([]);
  });
});

describe('what can be done meanwhile', () => {
  /** Of the small plan: rails stand against the end panels, everything else there comes later. */
  test('while the end panels are in clamps: cutting, but not setting rails against them', () => {
    const build = buildAfter([], smallPlan());
    expect(meanwhile(build, ['ends']).map(({ id }) => id)).toEqual(['measure', 'cut/2x4@45']);
  });

  test('while sealer dries on everything, nothing is put together', () => {
    const build = buildAfter([], smallPlan());
    expect(meanwhile(build, ['seal']).map(({ id }) => id)).not.toContain('rails');
  });
});

describe('a timer that is put off', () => {
  test('z lets the one that rings ring again in ten minutes', () => {
    const nowMs = TUESDAY_MS + 31 * MINUTE_MS;
    expect(used(31).press('z').asks).toEqual([
      {
        kind: 'record',
        events: [
          {
            kind: 'timer-snoozed',
            atMs: nowMs,
            timer: 'ends/clamp',
            untilMs: nowMs + 10 * MINUTE_MS,
          },
        ],
      },
    ]);
  });

  test('where nothing rings, z does nothing', () => {
    expect(used(5).press('z').asks).toEqual([]);
  });
});

describe('what fits into the wait', () => {
  // Of the small plan: measuring is 10 min, cutting 12 min counted; two people, a quarter for fetching.
  const build = buildAfter([], smallPlan());
  const free = (leftMinutes: number, nowMs = TUESDAY_MS) =>
    freeWork(build, ['ends'], { leftMinutes, nowMs });

  test('in half an hour both fit', () => {
    expect(free(30).fits.map(({ id }) => id)).toEqual(['measure', 'cut/2x4@45']);
  });

  test('in five minutes measuring is too long, and cutting has to wait for it', () => {
    expect(free(5).longer.map(({ id }) => id)).toEqual(['measure']);
    expect(free(5).partly).toEqual([]);
  });

  test('what is counted can be begun in a wait that is too short for all of it', () => {
    const measured = buildAfter([{ kind: 'step-done', atMs: TUESDAY_MS, step: 'measure' }]);
    const { partly } = freeWork(measured, ['ends'], { leftMinutes: 5, nowMs: TUESDAY_MS });
    expect(partly.map(({ id }) => id)).toEqual(['cut/2x4@45']);
  });

  test('at night no saw is offered', () => {
    const cutting = build.plan.steps.find(({ id }) => id === 'cut/2x4@45');
    const loud = cutting === undefined ? cutting : { ...cutting, care: ['noise'] };
    const steps = build.plan.steps.map(step => (loud && step.id === loud.id ? loud : step));
    const night = new Date(TUESDAY_MS).setHours(23, 0, 0, 0);
    const late = freeWork({ ...build, plan: { ...build.plan, steps } }, ['ends'], {
      leftMinutes: 600,
      nowMs: night,
    });
    expect(late.fits.map(({ id }) => id)).toEqual(['measure']);
    expect(late.loud.map(({ id }) => id)).toEqual(['cut/2x4@45']);
  });
});
