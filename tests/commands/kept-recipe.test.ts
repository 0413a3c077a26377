import { expect, test } from 'vitest';
import { withRecipe } from '../../src/commands/kept-build.js';
import { workbookNamed } from '../support/program.js';

// A second window reads a build at each key; the recipe in it is the same text each time.
test('the recipe of a build is read once as long as its text is the same', () => {
  const first = withRecipe(workbookNamed('porch'));
  const again = withRecipe(workbookNamed('porch'));
  expect(first.ok && again.ok && again.recipe === first.recipe).toBe(true);
  const other = withRecipe(workbookNamed('porch', { recipeText: 'recipe: 1' }));
  expect(other.ok).toBe(false);
  expect(withRecipe(workbookNamed('porch')).ok).toBe(true);
});
