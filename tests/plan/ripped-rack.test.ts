import { describe, expect, test } from 'vitest';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { feet, inches } from '../../src/measure/inch.js';
import { adviceOn } from '../../src/plan/advice.js';
import { rackNow } from '../../src/plan/rack-now.js';
import { settingOf } from '../../src/plan/setting.js';
import { cutStepsOf, type WorkSoFar } from '../../src/plan/work-so-far.js';
import type { Answers } from '../../src/recipe/values.js';
import { planOf, project } from '../support/projects.js';

const OFFERS: Answers = {
  offers: {
    kind: 'offers',
    value: [
      { section: '2x4', length: feet(8), cents: 448 },
      { section: '1x2', length: feet(8), cents: 298 },
      { section: '1x4', length: feet(8), cents: 428 },
    ],
  },
};

describe('strips that are ripped, at the bench', () => {
  const plan = planOf(project('planter-bench'), OFFERS);
  const setting = settingOf(OFFERS, SIXTEENTHS);
  const strips = plan.purchases.find(({ ripped }) => ripped !== undefined);
  const section = strips?.section ?? '';
  const fresh: WorkSoFar = { tallies: new Map(), done: new Set(), rackChanges: [] };

  test('lie on the rack as boards of their own, every piece on one of them', () => {
    expect(section).toBe('1x2');
    const rack = rackNow(section, { plan, work: fresh, setting });
    const onRack = rack?.rack.boards.flatMap(({ cuts }) => cuts.map(({ mark }) => mark)).sort();
    const wanted = plan.cutList
      .filter(row => row.section === section)
      .flatMap(({ mark, count }) => Array.from({ length: count }, () => mark))
      .sort();
    expect(onRack).toEqual(wanted);
  });

  test('a spoiled strip is answered as any other piece', () => {
    const steps = cutStepsOf(plan).filter(step => step.section === section);
    expect(steps.length).toBeGreaterThan(0);
    for (const { step, rows } of steps) {
      const lost = {
        kind: 'spoiled' as const,
        step: step.id,
        section,
        mark: rows.at(0)?.mark ?? '',
        left: inches(2),
        tallies: new Map([[step.id, 1]]),
        done: new Set<string>(),
      };
      const work = { ...lost, rackChanges: [lost] };
      expect(adviceOn(lost, { plan, work, setting })).toBeDefined();
    }
  });
});
