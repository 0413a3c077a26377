import { describe, expect, test } from 'vitest';
import { feet } from '../../src/measure/inch.js';
import { stepsPage } from '../../src/print/steps-page.js';
import type { Answers } from '../../src/recipe/values.js';
import { planOf, project } from '../support/projects.js';

/** Keeper strips of 1x2 are cheaper ripped out of 2x4 than bought. */
const OFFERS: Answers = {
  offers: {
    kind: 'offers',
    value: [
      { section: '2x4', length: feet(8), cents: 448 },
      { section: '1x2', length: feet(8), cents: 298 },
    ],
  },
};

const BENCH = project('planter-bench');

describe('strips that are ripped have a step of their own', () => {
  const plan = planOf(BENCH, OFFERS);
  const at = plan.steps.findIndex(({ id }) => id === 'rip/1x2');
  const rip = plan.steps[at];
  if (rip === undefined) throw new Error('nothing is ripped');

  test('before their crosscuts, which wait for it', () => {
    const crosscuts = plan.steps.filter(({ id }) => id.includes('/1x2@'));
    expect(crosscuts.length).toBeGreaterThan(0);
    expect(plan.steps[at + 1]?.id).toBe(crosscuts[0]?.id);
    for (const { needs } of crosscuts) expect(needs).toContain('rip/1x2');
    const others = plan.steps.filter(({ id }) => id.includes('/2x4@'));
    for (const { needs } of others) expect(needs).not.toContain('rip/1x2');
    // It can be done as soon as the first crosscut can.
    expect(rip.needs).toEqual(plan.steps.find(({ id }) => id.includes('@'))?.needs);
  });

  // Dressed 2x4: 1-1/2 x 3-1/2 in (American Softwood Lumber Standard, PS 20). Three strips of 3/4 in: 1/8 in edge and
  // its cut of 1/8 in, 3 x 3/4, 2 x 1/8 are 2-3/4 in. For the edge the fence stands at 3-1/2 - 1/8 - 1/8 = 3-1/4 in.
  test('with the fence for the edge and for the strips', () => {
    expect(rip.big).toEqual({ text: '3/4 in', caption: 'from fence to blade, for 2x4' });
    expect(rip.settings.map(({ name, text }) => `${name}: ${text}`).slice(1)).toEqual([
      'Blade: for ripping, just above the board; it takes 1/8 in',
    ]);
    expect(rip.say[0]).toContain('fence at 3-1/4 in, 1/8 in off one edge');
    expect(rip.say[1]).toContain('set it at 3/4 in: 3 strips from each board');
    expect(rip.look[0]).toBe('The first strip is 3/4 in wide to 1/32 in, at both ends.');
    expect(rip.say.join(' ')).toContain('its width is the thickness of 2x4');
  });

  test('by the lead, with a push stick, the cautions of the saw and of ripping, and minutes in the plan', () => {
    expect([rip.who, rip.tally?.of]).toEqual(['lead', 'strip']);
    expect(rip.care).toEqual(expect.arrayContaining(['ripping', 'table-saw', 'dust', 'noise']));
    expect(plan.cautions.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['ripping', 'table-saw']),
    );
    expect(plan.tools.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['table-saw', 'push-stick']),
    );
    expect(plan.time.sessions.flatMap(({ steps }) => steps)).toContain('rip/1x2');
    // Task table: a fence 3 to 6 minutes, set twice; a cut along the board 1 to 2 minutes, four for each board; a quarter
    // more for fetching and tidying.
    const bought = plan.purchases.find(({ ripped }) => ripped !== undefined)?.buy ?? [];
    const boards = bought.reduce((sum, { count }) => sum + count, 0);
    expect(rip.minutes.value).toBe(Math.round((2 * 4.5 + boards * 4 * 1.5) * 1.25));
  });

  test('and is printed with the other steps', () => {
    const printed = JSON.stringify(stepsPage(plan));
    expect(printed).toContain(rip.title);
  });
});

test('a thin blade of a table saw is reckoned with for ripping too', () => {
  const saw: Answers = { ...OFFERS, saw: { kind: 'choice', value: 'table-saw-thin' } };
  const ripped = planOf(BENCH, saw).purchases.find(it => it.ripped !== undefined)?.ripped;
  // 3/32 in thin kerf: 3-1/2 - 1/8 - 3/32 in.
  expect((ripped?.edgeFence.value ?? 0) / 25.4).toBeCloseTo(3.5 - 1 / 8 - 3 / 32, 9);
});

test('without prices, or where strips are bought, nothing is ripped', () => {
  const steps = planOf(BENCH, {}).steps.map(({ id }) => id);
  expect(steps.filter(id => id.startsWith('rip/'))).toEqual([]);
});
