import { readRecipe } from '../recipe/read.js';
import { tableLines } from '../text/table.js';
import type { Arguments } from './arguments.js';
import type { Library } from './library.js';
import { fine, type Outcome } from './outcome.js';

/** `notchbook recipes`: what there is to build. */
export function recipesCommand({ width }: Arguments, library: Library): Outcome {
  const rows = library.all().flatMap(found => {
    const read = found.ok ? readRecipe(found.text) : undefined;
    return read?.ok ? [[read.recipe.id, read.recipe.title, read.recipe.about]] : [];
  });
  const columns = [{ title: 'Name' }, { title: 'Title' }, { title: 'What it is', grow: true }];
  return fine(`${tableLines(columns, rows, width).join('\n')}\n`);
}
