import { describe, expect, test } from 'vitest';
import { SIXTEENTHS } from '../../src/measure/displays.js';
import { settingsNow } from '../../src/plan/cut-step-now.js';
import type { Plan } from '../../src/plan/plan.js';
import { settingOf } from '../../src/plan/setting.js';
import { usualAnswers } from '../../src/recipe/questions.js';
import type { Recipe } from '../../src/recipe/recipe.js';
import { planOf, project } from '../support/projects.js';

const BENCH = project('planter-bench');

/** The bench with its cutting split in two: the end panels first, everything else after them. */
function endPanelsFirst(): Recipe {
  return {
    ...BENCH,
    steps: BENCH.steps.flatMap(rule => {
      if (rule.id !== 'cut-boards') return [rule];
      const own = rule.cuts.filter(({ path }) => path === 'end_panel');
      const others = rule.cuts.filter(({ path }) => path !== 'end_panel');
      return [
        { ...rule, id: 'cut-ends', cuts: own },
        { ...rule, cuts: others },
      ];
    }),
  };
}

/** The bench as it was cut before: feet and blocks after all that is longer. */
function feetLast(): Recipe {
  const feet = BENCH.steps.filter(({ id }) => id === 'cut-feet');
  return {
    ...BENCH,
    steps: BENCH.steps.flatMap(rule => {
      if (rule.id === 'cut-feet') return [];
      return rule.id === 'cut-boards' ? [rule, ...feet] : [rule];
    }),
  };
}

/** Board ends that the cutting steps of a section square, as their times count them. */
function squared({ steps }: Plan, section: string): number {
  return steps
    .filter(({ id }) => id.includes(`/${section}@`))
    .map(({ minutes }) => Number(/(\d+) board ends? squared/.exec(minutes.because)?.[1] ?? 0))
    .reduce((sum, ends) => sum + ends, 0);
}

function clampAt(plan: Plan, step: string): string | undefined {
  const found = plan.steps.find(({ id }) => id.startsWith(step));
  return found?.settings.find(({ name }) => name === 'Clamp')?.text;
}

// The first end of a board is squared once, whatever it gives: so many ends as there are boards.
describe('ends that are squared', () => {
  test.each([
    ['as the bench is cut', BENCH],
    ['where two steps cut posts and rails of one length', endPanelsFirst()],
    ['with the feet last', feetLast()],
  ])('are as many as there are boards: %s', (_, recipe) => {
    const plan = planOf(recipe);
    for (const { section, boards } of plan.purchases)
      expect([section, squared(plan, section)]).toEqual([section, boards.length]);
  });
});

describe('what is clamped follows the order of the steps', () => {
  // Cut first, the blocks come off boards of 10 ft: there is always more than 12 in to hold.
  test('blocks that are cut first are clamped nowhere', () => {
    expect(clampAt(planOf(BENCH), 'cut-feet/2x4@')).toBe(undefined);
  });

  // Board 10 gives four bearers of 15 in and eight blocks of 7-3/16 in with 5/8 in left behind a last cut. After the
  // bearers, 5/8 in is behind the last block and 5/8 + 1/8 + 7-3/16 = 7-15/16 in behind the one before it: both under
  // 12 in, as the blocks are. 15-1/4 in is behind the third last.
  test('the last blocks of a build whose recipe cuts them at last are clamped', () => {
    expect(clampAt(planOf(feetLast()), 'cut-feet/2x4@182')).toContain('2 pieces on board 10');
  });

  // A build may be cut out of turn: begun with a program that told another order, or by somebody who went ahead.
  test('blocks that come first by the plan, but are left when all that is longer is cut, are clamped', () => {
    const plan = planOf(BENCH);
    const longer = plan.steps.filter(({ id }) => id.startsWith('cut-boards/2x4@'));
    const work = { tallies: new Map(), done: new Set(longer.map(({ id }) => id)), rackChanges: [] };
    const setting = settingOf(usualAnswers(BENCH), SIXTEENTHS);
    const blocks = plan.steps.find(({ id }) => id.startsWith('cut-feet/2x4@182'));
    if (blocks === undefined) throw new Error('no step cuts blocks');
    const now = settingsNow(blocks, { plan, work, setting });
    expect(now.find(({ name }) => name === 'Clamp')?.text).toContain(
      '2 pieces on the rest of board 10',
    );
  });
});
