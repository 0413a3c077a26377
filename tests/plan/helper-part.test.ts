import { describe, expect, test } from 'vitest';
import { helperPart } from '../../src/plan/helper-part.js';
import { planOf, project } from '../support/projects.js';

const BENCH = project('planter-bench');

function choice(value: string) {
  return { kind: 'choice', value } as const;
}

function who(people: string, id: string) {
  return planOf(BENCH, { people: choice(people) }).steps.find(step => step.id === id);
}

describe('who does a step, by the age of the helper', () => {
  test.each([
    ['helper', 'sand-loose', 'helper', []],
    ['helper-16-17', 'sand-loose', 'both', []],
    ['helper-9-11', 'sand-loose', 'both', []],
    ['helper-under-9', 'sand-loose', 'both', ['sander']],
    ['alone', 'sand-loose', 'helper', []],
    // Lifting pots: a grown helper alone, a young one with somebody.
    ['helper', 'pots', 'helper', []],
    ['helper-12-15', 'pots', 'both', []],
    // The nailer stays with the lead, whoever helps.
    ['helper', 'end-infill', 'both', ['brad-nailer']],
    ['helper-9-11', 'seal', 'both', ['brush']],
    ['helper-12-15', 'seal', 'both', []],
    ['helper-12-15', 'notch-posts', 'lead', []],
  ])('%s: %s is for %s, hands off %j', (people, step, does, handsOff) => {
    expect(who(people, step)).toMatchObject({ who: does, handsOff });
  });

  test('builds begun before ages were asked keep a grown helper', () => {
    expect(planOf(BENCH, { people: choice('helper') }).time.people).toBe(2);
    expect(planOf(BENCH, { people: choice('helper-9-11') }).time.people).toBe(2);
    expect(planOf(BENCH, { people: choice('alone') }).time.people).toBe(1);
  });

  /** 29 CFR 570.55 and laws elsewhere: an age rule is the law's to make, not a program's. */
  test('with a young helper the plan says first that local law decides', () => {
    const warned = (people: string) =>
      planOf(BENCH, { people: choice(people) }).warnings.filter(it => /helper is/.test(it));
    expect(warned('helper-12-15').join(' ')).toMatch(/12 to 15: .*Your local rules.*come first/);
    expect(warned('helper')).toEqual([]);
    expect(warned('alone')).toEqual([]);
  });

  test('what is shared with young helpers is read aloud before the first saw, and only then', () => {
    const young = planOf(BENCH, { people: choice('helper-12-15') });
    const reading = young.steps.filter(({ care }) => care.includes('children'));
    expect(reading.map(({ id }) => id)).toEqual(['set-up']);
    expect(young.cautions.find(({ id }) => id === 'children')?.source).toMatch(/29 CFR 570\.55/);
    const grown = planOf(BENCH, { people: choice('helper') });
    expect(grown.cautions.map(({ id }) => id)).not.toContain('children');
  });

  test('no age makes a step easier to get than the recipe says', () => {
    const lead = { who: 'lead', tools: ['tape'], care: [] } as const;
    expect(helperPart(lead, 'grown').who).toBe('lead');
    const both = { who: 'both', tools: ['tape'], care: [] } as const;
    expect(helperPart(both, 'grown').who).toBe('both');
  });
});
