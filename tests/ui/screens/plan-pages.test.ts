import { expect, test } from 'vitest';
import { planPages } from '../../../src/ui/screens/plan/pages.js';
import type { Event } from '../../../src/workbook/events.js';
import { benchPlan, buildAfter, TUESDAY_MS } from '../../support/open-build.js';

const START: Event = { kind: 'build-started', atMs: TUESDAY_MS };

test('a page of the plan is made when it is turned to, not after each entry of the journal', () => {
  const plan = benchPlan();
  const [first] = plan.steps;
  if (first === undefined) throw new Error('no steps');
  const build = buildAfter([START], plan);
  planPages(build);
  const done: Event = { kind: 'step-done', atMs: TUESDAY_MS + 1, step: first.id };
  const later = buildAfter([START, done], plan);
  let asked = 0;
  const workbook = {
    ...later.workbook,
    get events() {
      asked += 1;
      return later.workbook.events;
    },
  };
  const pages = planPages({ ...later, workbook });
  expect(pages.map(({ id }) => id)).toContain('record');
  expect(asked).toBe(0);
  const record = pages.find(({ id }) => id === 'record');
  expect(record?.body().title).toBe('Build record: Garden bench');
  expect(asked).toBeGreaterThan(0);
  const before = asked;
  expect(record?.body()).toBe(record?.body());
  expect(asked).toBe(before);
});
