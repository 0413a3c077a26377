import { expect, test } from 'vitest';
import { stepScreen } from '../../../src/ui/screens/step/screen.js';
import type { Event } from '../../../src/workbook/events.js';
import {
  benchPlan,
  buildAfter,
  contextWith,
  TUESDAY_MS,
  usedWith,
} from '../../support/open-build.js';
import { viewLines } from '../../support/screen-page.js';

const BENCH = benchPlan();
/** High enough for every caution of a step at once. */
const TALL = { columns: 80, rows: 80 };

/** What `c` shows at a step. */
function cautionsAt(step: string): string {
  const visited: Event = { kind: 'step-visited', atMs: TUESDAY_MS, step };
  const at = contextWith(buildAfter([visited], BENCH), { size: TALL });
  const used = usedWith(stepScreen, at).press('c');
  return viewLines(stepScreen, used.state, used.at).join('\n');
}

test('the bench is glued with PVA: nobody is told of gloves for epoxy', () => {
  const text = cautionsAt('end-corners');
  expect(text).toContain('This glue, PVA, is mild');
  expect(text).not.toMatch(/epoxy|polyurethane|resorcinol/i);
});

test.each(BENCH.steps.filter(({ care }) => care.length > 0).map(({ id }) => id))(
  'at %s each source is named once, and what comes first once',
  id => {
    const text = cautionsAt(id).replace(/\s+/g, ' ');
    const step = BENCH.steps.find(it => it.id === id);
    const named = BENCH.cautions.filter(caution => step?.care.includes(caution.id));
    for (const { title, source } of named) {
      expect(text).toContain(title);
      expect(text.split(source.replace(/\s+/g, ' ')).length - 1, source).toBe(1);
    }
    expect(text.split('your local code and licensed practice come first').length - 1).toBe(1);
  },
);

test('a page of several cautions is read with one key, and one undo brings the whole page back', () => {
  // The first time at the saw: eyes, ears, dust and the hands.
  const visited: Event = {
    kind: 'step-visited',
    atMs: TUESDAY_MS,
    step: BENCH.steps.find(({ phase }) => phase === 'cut')?.id ?? '',
  };
  const used = usedWith(stepScreen, contextWith(buildAfter([visited], BENCH), { size: TALL }));
  const shown = () => viewLines(stepScreen, used.state, used.at).join('\n');
  const read = () => used.at.build?.progress.briefed.size ?? 0;
  const pages: string[] = [];
  for (let before = 0; read() - before < 2; ) {
    before = read();
    pages.push(shown());
    if (pages.length > 40) throw new Error('no page has several cautions');
    used.wait(1000).press('space');
  }
  const cautions = read();
  used.press('u');
  expect(shown()).toMatch(/Take back: \d+ cautions were read\?/);
  used.press('u');
  expect(shown()).toBe(pages.at(-1));
  expect(cautions - read()).toBeGreaterThan(1);
});
