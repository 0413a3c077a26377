import type { Shelf } from '../files/shelf.js';
import type { Display } from '../measure/quantities.js';
import { readRecipe } from '../recipe/read.js';
import { runScreens } from '../ui/run.js';
import type { Ask } from '../ui/screen.js';
import { SCREENS } from '../ui/screens.js';
import type { Terminal } from '../ui/terminal.js';
import type { Look } from '../ui/theme.js';
import { windowSize } from '../ui/window-size.js';
import type { Library } from './library.js';
import { type ExampleMaker, type KeptRecipe, shelfServices } from './shelf-services.js';

export type Workshop = {
  readonly terminal: Terminal;
  readonly window: { readonly columns?: number; readonly rows?: number };
  readonly shelf: Shelf;
  readonly library: Library;
  readonly display: Display;
  readonly look: Look;
  readonly now: () => number;
  readonly steadyMs: () => number;
  readonly makeExample: ExampleMaker;
  /** What to begin with: a build or an interview that was named. */
  readonly asks: readonly Ask[];
  /** To be told at once. */
  readonly notice: string | undefined;
};

/** Opens the screens on the builder's shelf, and comes back when they are left. */
export async function openWorkbook(workshop: Workshop): Promise<void> {
  const { shelf, display, now, steadyMs, look, window, asks, terminal } = workshop;
  const recipes = keptRecipes(workshop.library);
  const onShelf = shelfServices({ shelf, recipes, display, now }, workshop.makeExample);
  try {
    await runScreens(
      {
        services: { ...onShelf, now, steadyMs },
        screens: SCREENS,
        recipes: recipes.map(({ recipe }) => recipe),
        display,
        look,
        size: windowSize(window),
        asks,
        notice: workshop.notice,
      },
      terminal,
    );
  } finally {
    shelf.release();
  }
}

/** The recipes that can be read; the check command tells about the others. */
function keptRecipes(library: Library): readonly KeptRecipe[] {
  return library.all().flatMap(found => {
    const read = found.ok ? readRecipe(found.text) : undefined;
    return found.ok && read?.ok === true ? [{ recipe: read.recipe, text: found.text }] : [];
  });
}
