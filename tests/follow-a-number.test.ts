import { expect, test } from 'vitest';
import { inches } from '../src/measure/inch.js';
import { cutTable } from '../src/plan/pages/cut-page.js';
import { answerText, questionsOf } from '../src/recipe/questions.js';
import { planOf, project } from './support/projects.js';

// The map for developers follows this number; here each stage of it is held. A seat of 72 in between
// planters of 18 in is 72 + 2 x 18 = 108 in overall: arithmetic.
test('a seat of 72 in can be followed from the answer to the page', () => {
  const recipe = project('planter-bench');
  const answer = { kind: 'length', value: inches(72) } as const;
  const plan = planOf(recipe, { seat_length: answer });

  const asked = questionsOf(recipe).find(question => question.id === 'seat_length');
  expect(asked && answerText(asked, answer, plan.display)).toBe('72 in');

  const worked = plan.sizes.find(size => size.id === 'overall_width');
  expect(worked?.figure.value).toBeCloseTo(inches(108), 9);
  expect(worked?.figure.because).toContain('72 in + 2 x 18 in');

  const rail = plan.model.parts.find(part => part.id === 'seat_rail/1');
  expect(rail?.length).toBeCloseTo(1828.8, 9);

  const row = plan.cutList.find(it => it.pieces.includes('seat_rail/1'));
  expect(row?.length.value).toBeCloseTo(1828.8, 9);

  const shown = cutTable(plan).rows.find(cells => cells[0] === row?.mark);
  expect(shown?.slice(1, 4)).toEqual(['2', '72 in', '2x6']);
});
