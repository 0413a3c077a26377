import { describe, expect, test } from 'vitest';
import { timePage } from '../../src/plan/pages/time-page.js';
import { readRecipe } from '../../src/recipe/read.js';
import { pageLines } from '../../src/text/page-lines.js';
import { BENCH, days, FIRST, stepOf, turnsOf } from '../support/bench-hours.js';
import { planOf, projectText } from '../support/projects.js';

describe('two people side by side', () => {
  const plan = planOf(BENCH);
  const turns = turnsOf(plan);
  const besides = (helper: (typeof turns)[number]) =>
    turns.filter(
      other =>
        other.at === helper.at &&
        other.who === 'lead' &&
        other.from < helper.to &&
        helper.from < other.to,
    );

  /** Steps that have to be done before, at first or at second hand. */
  function needed(id: string): ReadonlySet<string> {
    const found = new Set(stepOf(plan, id).needs);
    for (const need of found) for (const earlier of stepOf(plan, need).needs) found.add(earlier);
    return found;
  }

  test('the helper sands the loose slats while the lead cuts notches', () => {
    const sanding = turns.find(({ step }) => step.id === 'sand-loose');
    if (sanding === undefined) throw new Error('no sanding');
    expect(sanding.who).toBe('helper');
    expect(besides(sanding).map(({ step }) => step.id)).toEqual([
      'notch-posts',
      'notch-seat-rails',
    ]);
    // Slats and planks are sawn before they are sanded, and sanded before they are fastened.
    const sawn = plan.steps.filter(
      ({ phase, bright }) => phase === 'cut' && bright.some(id => sanding.step.bright.includes(id)),
    );
    expect(sawn.length).toBeGreaterThan(3);
    for (const { id } of sawn) expect(needed('sand-loose')).toContain(id);
    for (const id of ['slats', 'end-infill', 'box-infill', 'floor'])
      expect(needed(id)).toContain('sand-loose');
  });

  test('a step that works on boards is waited for as well where the recipe says so', () => {
    const said = projectText('planter-bench').replace(
      '- id: sand-loose',
      '- id: sand-loose\n    before: [seat-rails]',
    );
    const read = readRecipe(said);
    if (!read.ok) throw new Error('not read');
    expect(stepOf(plan, 'seat-rails').needs).not.toContain('sand-loose');
    expect(stepOf(planOf(read.recipe), 'seat-rails').needs).toContain('sand-loose');
  });

  // Common practice: a board is numbered before the first cut, since the list tells by numbers what it gives.
  test('boards are numbered and screws counted while the lead sets up the saw and cuts small blocks', () => {
    const alone = turns.filter(({ who, step }) => who === 'helper' && step.phase === 'cut');
    expect(alone.map(({ step }) => step.id)).toEqual(['number-boards', 'lay-out']);
    const beside = alone.flatMap(besides).map(({ step }) => step.id.split('/')[0]);
    expect([...new Set(beside)]).toEqual(['set-up', 'cut-feet']);
    const sawn = plan.steps.filter(({ phase, tally }) => phase === 'cut' && tally?.of === 'piece');
    expect(sawn.length).toBeGreaterThan(3);
    for (const { needs } of sawn) expect(needs).toContain('number-boards');
    const page = pageLines(timePage(plan), 80).join(' ').replace(/\s+/g, ' ');
    expect(page).toMatch(
      /Side by side from 18:00: lead: \d+\. Set up the saw .* \/ helper: \d+\. Number and stack/,
    );
  });

  // In a closed box of 12 in a drill-driver of about 7 in, its bit and a screw of 2-3/4 in have no room.
  test('bearers are screwed to flat side panels, before the box is closed round them', () => {
    expect(needed('box-close')).toContain('bearers');
    expect(needed('bearers')).not.toContain('box-close');
    expect(needed('floor')).toContain('box-close');
  });

  // 29 CFR 570.55 and the caution on young helpers: somebody watches them.
  test.each(['helper-16-17', 'helper-12-15', 'helper-9-11', 'helper-under-9'])(
    '%s does nothing alone while the lead is at a saw',
    people => {
      const young = turnsOf(planOf(BENCH, { people: { kind: 'choice', value: people } }));
      const saws = ['miter-saw', 'jigsaw', 'brad-nailer', 'table-saw', 'circular-saw'];
      const alone = young.filter(({ who }) => who === 'helper');
      const sawing = young.filter(({ step }) => step.tools.some(tool => saws.includes(tool)));
      for (const one of alone) {
        const crowd = sawing.filter(it => it.at === one.at && it.from < one.to && one.from < it.to);
        expect(crowd).toEqual([]);
      }
    },
  );

  test('somebody alone keeps the order of the recipe, clamps left aside', () => {
    const alone = planOf(BENCH, { people: { kind: 'choice', value: 'alone' } });
    const order = [...new Set(turnsOf(alone).map(({ step }) => alone.steps.indexOf(step)))];
    const upToGlue = order.slice(
      0,
      order.indexOf(alone.steps.findIndex(it => it.id === 'dry-fit')),
    );
    expect(upToGlue).toEqual(upToGlue.toSorted((a, b) => a - b));
  });
});

describe('before the first session', () => {
  test('talking, asking and buying are told with their minutes, and that they need no bench', () => {
    const lines = pageLines(timePage(planOf(BENCH)), 80).join('\n');
    const before = lines.slice(
      lines.indexOf('Before the first session'),
      lines.indexOf('Session 1'),
    );
    expect(before).toMatch(/at the place and where wood is sold/);
    expect(before).toMatch(/20 min +together +1\. Hear the owner/);
    expect(before).toMatch(/1 h +together +3\. Buy and sort/);
  });
});

describe('hours for sealing', () => {
  const SEAL_DAYS = { first_day: FIRST, session_days: days('Tue, Thu, Sat 9:00-15:00') };

  // Common practice: after the morning dew, last stroke 4 h before sunset. Sunset at 45 degrees north in the middle of
  // December is about 16:20, by any almanac: 10:00 to 12:20.
  test('a Saturday in daylight is taken for it, although an evening would come sooner', () => {
    const plan = planOf(BENCH, SEAL_DAYS);
    const sealing = turnsOf(plan).find(({ step }) => step.id === 'seal');
    expect(sealing?.session.weekday).toBe('sat');
    expect(sealing?.from).toBeGreaterThanOrEqual(600);
    expect(sealing?.to).toBeLessThanOrEqual(745);
    expect(plan.time.trouble).toBe('');
    expect(plan.time.proven).toBe(true);
  });

  test('evenings alone have none: it is laid all the same, and told with what it wants', () => {
    const { trouble } = planOf(BENCH).time;
    expect(trouble).toMatch(/^Sealing falls at 1\d:\d\d, .* it wants 10:00 to 14:00 /);
    expect(trouble).toMatch(/morning of a day off, or seal indoors where it stays 50 °F or more/);
  });
});
