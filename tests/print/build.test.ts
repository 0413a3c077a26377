import { beforeAll, describe, expect, test } from 'vitest';
import { MILLIMETERS } from '../../src/measure/displays.js';
import { makePlan } from '../../src/plan/make-plan.js';
import { printPaper } from '../../src/print/print-paper.js';
import { BUILD, buildInProgress, NOTE, planned } from '../support/build-on-paper.js';
import { paperAsk } from '../support/paper.js';
import { HAS_POPPLER, NEEDS_POPPLER, pdfPages } from '../support/poppler.js';
import { project } from '../support/projects.js';

describe.skipIf(!HAS_POPPLER)(`a build in progress on paper${NEEDS_POPPLER}`, () => {
  let pages: readonly string[] = [];
  const page = (title: string) => pages.find(text => text.trimStart().startsWith(title)) ?? '';

  beforeAll(async () => {
    pages = pdfPages(await printPaper(paperAsk(buildInProgress())));
  }, 60_000);

  test('says on the cover whose it is and how far it has come', () => {
    const done = planned().steps.filter(({ id }) => BUILD.progress.done.has(id)).length;
    expect(done).toBeGreaterThan(10);
    expect(pages[0]).toContain(`Example: co-op roof terrace: ${done} of`);
  });

  test('says at each setting of the stop how many are cut', () => {
    const saw = page('At the saw');
    for (const { count } of planned().sawOrder) expect(saw).toContain(`${count} of ${count}`);
  });

  test('shows what was measured beside what was planned', () => {
    const row = pages
      .join('\n')
      .split('\n')
      .filter(line => line.includes('Width of the 2x4'));
    expect(row.some(line => /3-1\/2 in +3-7\/16 in/.test(line))).toBe(true);
    const told = 'Width of the 2x4, on several boards: 3-7/16 in, planned 3-1/2 in';
    expect(pages[0]?.split(told).length).toBe(2);
  });

  test('says which steps are done, and shows the note that was left at one', () => {
    const all = pages.join('\n');
    expect(all).toMatch(/1\. Hear the owner and measure the place\s+together, about .*; done/);
    expect(all).not.toMatch(/36\. Hand it over\s+together, about .*; done/);
    expect(all).toContain(`Note: ${NOTE}`);
  });

  test('adds the record of the build', () => {
    expect(page('Build record')).toContain('co-op roof terrace');
  });
});

describe.skipIf(!HAS_POPPLER)(`a plan in millimeters on A4${NEEDS_POPPLER}`, () => {
  test('shows no inch beside boards and joints', async () => {
    const made = makePlan(project('planter-bench'), BUILD.workbook.answers, MILLIMETERS);
    if (!made.ok) throw new Error('the example can be planned');
    const pdf = await printPaper(paperAsk({ plan: made.plan, pages: ['boards', 'joints'] }));
    const text = pdfPages(pdf).join('\n');
    expect(text).toContain('1219 mm');
    expect(text).not.toMatch(/\d in\b/);
  }, 60_000);
});
