import { openShelf } from '../files/open-shelf.js';
import type { Display } from '../measure/quantities.js';
import { readRecipe } from '../recipe/read.js';
import { SCREENS } from '../ui/screens.js';
import { helperServices } from './helper-services.js';
import type { Library } from './library.js';
import { makeExample } from './make-example.js';
import type { Desk } from './open-workbook.js';
import { type KeptRecipe, shelfServices } from './shelf-services.js';

export type DeskPlace = {
  /** The data folder. */
  readonly folder: string;
  readonly library: Library;
  readonly display: Display;
  readonly now: () => number;
  readonly workingFolder: string;
};

/** The builder's shelf with everything that the screens may ask of it. */
export function prepareDesk({ folder, library, display, now, workingFolder }: DeskPlace): Desk {
  const shelf = openShelf(folder, now);
  const recipes = once(() => keptRecipes(library));
  const helper = helperServices(folder, now);
  return {
    services: shelfServices(
      { shelf, recipes, display, now, workingFolder, helper },
      (kept, nowMs) => makeExample(kept, display, nowMs),
    ),
    screens: SCREENS,
    recipes: once(() => recipes().map(({ recipe }) => recipe)),
    release: shelf.release,
  };
}

/** The recipes that can be read; the check command tells about the others. */
function keptRecipes(library: Library): readonly KeptRecipe[] {
  return library.all().flatMap(found => {
    const read = found.ok ? readRecipe(found.text) : undefined;
    return found.ok && read?.ok === true ? [{ recipe: read.recipe, text: found.text }] : [];
  });
}

/** Reading a recipe takes a while: it is done when first asked for, and then kept. */
function once<Value>(make: () => Value): () => Value {
  let made: { readonly value: Value } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
