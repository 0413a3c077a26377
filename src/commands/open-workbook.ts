import type { Display } from '../measure/quantities.js';
import type { Recipe } from '../recipe/recipe.js';
import { FIRST_SCREEN } from '../ui/first-screen.js';
import type { Screens } from '../ui/page.js';
import { runScreens } from '../ui/run.js';
import type { Ask, ShelfLine } from '../ui/screen.js';
import type { Terminal } from '../ui/terminal.js';
import type { Look } from '../ui/theme.js';
import { windowSize } from '../ui/window-size.js';
import type { ShelfServices } from './shelf-services.js';

/** What takes longer to load than the first screen may wait: recipes, plans, saving. */
export type Desk = {
  readonly services: ShelfServices;
  readonly recipes: () => readonly Recipe[];
  readonly screens: Screens;
  readonly release: () => void;
};

export type Workshop = {
  readonly terminal: Terminal;
  readonly window: { readonly columns?: number; readonly rows?: number };
  readonly display: Display;
  readonly look: Look;
  readonly now: () => number;
  readonly steadyMs: () => number;
  readonly list: () => readonly ShelfLine[];
  readonly prepareDesk: () => Promise<Desk>;
  /** What to begin with: a build or an interview that was named. */
  readonly asks: readonly Ask[];
  /** To be told at once. */
  readonly notice: string | undefined;
};

/** Opens the screens on the builder's shelf, and comes back when they are left. */
export async function openWorkbook(workshop: Workshop): Promise<void> {
  const { display, now, steadyMs, look, window, asks, notice, list, terminal } = workshop;
  const prepared: { desk?: Desk } = {};
  const desk = (): Desk => {
    if (prepared.desk === undefined) throw new Error('a key came before its answer was ready');
    return prepared.desk;
  };
  const prepare = async () => {
    prepared.desk = await workshop.prepareDesk();
  };
  try {
    await runScreens(
      {
        services: { ...later(() => desk().services), list, now, steadyMs },
        screens: screensLater(() => desk().screens),
        recipes: () => desk().recipes(),
        display,
        look,
        size: windowSize(window),
        asks,
        notice,
        prepare,
      },
      terminal,
    );
  } finally {
    prepared.desk?.release();
  }
}

function later(services: () => ShelfServices): Omit<ShelfServices, 'list'> {
  return {
    onDay: (plan, told) => services().onDay(plan, told),
    plan: (recipe, answers, display, bench) => services().plan(recipe, answers, display, bench),
    load: id => services().load(id),
    look: id => services().look(id),
    takeOver: id => services().takeOver(id),
    close: id => services().close(id),
    alike: id => services().alike(id),
    relabel: (id, label) => services().relabel(id, label),
    carry: id => services().carry(id),
    create: build => services().create(build),
    save: build => services().save(build),
    example: () => services().example(),
  };
}

/** The first screen at once, the others when there is a key to open them with. */
function screensLater(screens: () => Screens): Screens {
  return {
    home: FIRST_SCREEN,
    interview: at => screens().interview(at),
    plan: at => screens().plan(at),
    step: at => screens().step(at),
    timers: at => screens().timers(at),
    day: at => screens().day(at),
    pause: at => screens().pause(at),
    resume: at => screens().resume(at),
    mistake: at => screens().mistake(at),
    measure: at => screens().measure(at),
    keys: at => screens().keys(at),
  };
}
