import type { Arguments } from './commands/arguments.js';
import { readArguments } from './commands/arguments.js';
import { HELP } from './commands/help.js';
import type { Library, RecipeText } from './commands/library.js';
import { EXIT, failed, fine, type Outcome } from './commands/outcome.js';
import { thisMachine } from './files/machine.js';
import { openShelf } from './files/open-shelf.js';
import { dataPlace } from './files/place.js';
import { builtInRecipes, readRecipeText } from './files/recipes.js';
import { wantsAscii } from './ui/ascii-mode.js';

/** Everything from here on is joined for one run: arguments, clock, disk, terminal. */
async function main(): Promise<void> {
  const read = readArguments(process.argv.slice(2));
  if (!read.ok) return say(failed(read.problems, EXIT.usage));
  const given = read.value;
  if (given.command !== 'workbook') return say(await printed(given));
  const { isForScreens, Terminal } = await import('./ui/terminal.js');
  if (!isForScreens(process, process.env)) return say(await printed(given));
  await open(given, new Terminal(process, process.env));
}

async function open(
  given: Arguments,
  terminal: InstanceType<typeof import('./ui/terminal.js').Terminal>,
) {
  const { openWorkbook } = await import('./commands/open-workbook.js');
  const { makeExample } = await import('./commands/make-example.js');
  const { display } = given;
  const place = dataPlace(given.data, thisMachine());
  try {
    await openWorkbook({
      terminal,
      window: process.stdout,
      shelf: openShelf(place.folder, Date.now),
      library: library(),
      display,
      look: lookOf(given),
      now: Date.now,
      steadyMs: () => performance.now(),
      makeExample: (kept, nowMs) => makeExample(kept, display, nowMs),
      asks: [],
      notice: place.warning,
    });
  } catch (error) {
    const what = error instanceof Error ? error.message : String(error);
    say(
      failed([`Notchbook stopped: ${what}`, `Your builds are in ${place.folder}.`], EXIT.problems),
    );
  }
}

function lookOf({ ascii, color }: Arguments) {
  return {
    ascii: ascii || wantsAscii(process.env, process.platform),
    styled: color && process.env.FORCE_COLOR !== '0',
  };
}

async function printed(given: Arguments): Promise<Outcome> {
  switch (given.command) {
    case 'help':
      return fine(HELP);
    case 'recipes':
      return (await import('./commands/recipes.js')).recipesCommand(given, library());
    default:
      return (await import('./commands/plan.js')).planCommand(given, library());
  }
}

function library(): Library {
  const recipes = builtInRecipes(import.meta.url);
  const text = (file: string): RecipeText => {
    const found = readRecipeText(file);
    return found.ok
      ? { ok: true, file, text: found.value }
      : { ok: false, problem: `${found.problem} ${found.hint}` };
  };
  return {
    all: () => recipes.map(({ file }) => text(file)),
    find: name => text(recipes.find(({ id }) => id === name)?.file ?? name),
  };
}

function say({ out, err, code }: Outcome): void {
  process.stdout.write(out);
  process.stderr.write(err);
  process.exitCode = code;
}

await main();
