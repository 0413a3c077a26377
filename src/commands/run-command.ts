import type { Shelf } from '../files/shelf.js';
import { calendarDay } from '../workbook/clock-words.js';
import type { Arguments } from './arguments.js';
import { buildsCommand, exportCommand, importCommand } from './builds.js';
import { checkCommand } from './check.js';
import type { Library } from './library.js';
import type { Outcome } from './outcome.js';
import { planCommand } from './plan.js';
import { recipesCommand } from './recipes.js';
import { schemaCommand } from './schema.js';
import { showCommand } from './show.js';
import { sourcesCommand } from './sources.js';

/** Where commands find what they work on. */
export type Store = {
  readonly library: Library;
  /** The builder's builds; looked for only by commands that are about one. */
  readonly shelf: () => Shelf;
  readonly now: () => number;
};

/** The commands that print and end. Loaded only when one of them is asked for. */
export function runCommand(given: Arguments, { library, shelf, now }: Store): Outcome {
  switch (given.command) {
    case 'plan':
      return planCommand(given, library, calendarDay(now()));
    case 'recipes':
      return recipesCommand(given, library);
    case 'check':
      return checkCommand(given, library);
    case 'show':
      return showCommand(given, library);
    case 'builds':
      return buildsCommand(given, shelf());
    case 'export':
      return exportCommand(given, shelf(), now());
    case 'import':
      return importCommand(given, shelf());
    case 'sources':
      return sourcesCommand(given);
    case 'schema':
      return schemaCommand();
    case 'workbook':
      // On a pipe there is no screen to open: the example plan is printed instead.
      return planCommand({ ...given, rest: ['planter-bench'] }, library, calendarDay(now()));
    case 'hand-over':
    case 'print':
    case 'help':
    case 'version':
      throw new Error(`${given.command} is answered before anything of this is loaded`);
  }
}
