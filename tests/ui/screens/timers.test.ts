import { describe, expect, test } from 'vitest';
import { meanwhile } from '../../../src/ui/screens/timers/meanwhile.js';
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
