import type { Arguments } from './commands/arguments.js';
import { readArguments } from './commands/arguments.js';
import { HELP } from './commands/help.js';
import type { Library, RecipeText } from './commands/library.js';
import { EXIT, failed, fine, type Outcome } from './commands/outcome.js';
import { buildsIn } from './files/list-builds.js';
import { thisMachine } from './files/machine.js';
import { dataPlace } from './files/place.js';
import { builtInRecipes, readRecipeText } from './files/recipes.js';
import { readTextFile } from './files/text-file.js';
import { toAscii } from './text/safe-text.js';
import { wantsAscii } from './ui/ascii-mode.js';

/** Everything from here on is joined for one run: arguments, clock, disk, terminal. */
async function main(): Promise<void> {
  const words = process.argv.slice(2);
  if (words[0] === 'work') return say(await told(() => workedOut(words.slice(1))));
  const read = readArguments(words);
  if (!read.ok) return say(failed(read.problems, EXIT.usage));
  const given = read.value;
  if (given.command !== 'workbook') return say(await told(() => printed(given)));
  const { isForScreens, Terminal } = await import('./ui/terminal.js');
  if (!isForScreens(process, process.env)) return say(await told(() => printed(given)));
  await open(given, new Terminal(process, process.env));
}

async function open(
  given: Arguments,
  terminal: InstanceType<typeof import('./ui/terminal.js').Terminal>,
) {
  const { openWorkbook } = await import('./commands/open-workbook.js');
  const { display } = given;
  const { folder, warning } = dataPlace(given.data, thisMachine());
  const kept = `All that was shown as saved is in ${folder}. Start again to go on from there.`;
  process.once('uncaughtException', error => {
    terminal.close();
    say(stopped(error, kept));
    process.exit();
  });
  try {
    await openWorkbook({
      terminal,
      window: process.stdout,
      display,
      look: lookOf(given),
      now: Date.now,
      steadyMs: () => performance.now(),
      list: () => buildsIn(folder),
      prepareDesk: async () => {
        const { prepareDesk } = await import('./commands/prepare-desk.js');
        return prepareDesk({
          folder,
          library: library(),
          display,
          now: Date.now,
          workingFolder: process.cwd(),
        });
      },
      asks: [],
      notice: warning,
    });
  } catch (error) {
    say(stopped(error, kept));
  }
}

/** What is to be printed. A recipe that nobody checked may hold what the plan takes for granted. */
async function told(outcome: () => Promise<Outcome>): Promise<Outcome> {
  try {
    return await outcome();
  } catch (error) {
    return stopped(
      error,
      'For a recipe of your own, "notchbook check" may say what is wrong in it.',
    );
  }
}

/** A mistake of ours ends the program with a sentence, after the user's own screen is back. */
function stopped(error: unknown, then: string): Outcome {
  const what = error instanceof Error ? error.message : String(error);
  return failed([`Notchbook stopped by a mistake of its own: ${what}.`, then], EXIT.problems);
}

async function workedOut(words: readonly string[]): Promise<Outcome> {
  const { workCommand } = await import('./commands/work/work.js');
  return workCommand(words, {
    textOf: readTextFile,
    ascii: wantsAscii(process.env, process.platform),
  });
}

function lookOf({ ascii, color }: Arguments) {
  return {
    ascii: ascii || wantsAscii(process.env, process.platform),
    styled: color && process.env.FORCE_COLOR !== '0',
  };
}

async function printed(given: Arguments): Promise<Outcome> {
  if (given.command === 'help') return fine(HELP);
  if (given.command === 'version') return fine(`notchbook ${process.env.NOTCHBOOK_VERSION}\n`);
  const outcome = await run(given);
  return isPlain(given) ? plain(outcome) : outcome;
}

async function run(given: Arguments): Promise<Outcome> {
  const { folder } = dataPlace(given.data, thisMachine());
  if (given.command === 'hand-over') {
    const { handOverCommand } = await import('./commands/hand-over.js');
    return handOverCommand(given, folder);
  }
  if (given.command === 'print') {
    const { printCommand } = await import('./commands/print.js');
    const { printMeans } = await import('./commands/print-means.js');
    return printCommand(given, printMeans(folder, library(), import.meta.url));
  }
  const { runCommand } = await import('./commands/run-command.js');
  const { openShelf } = await import('./files/open-shelf.js');
  const shelf = () => openShelf(folder, Date.now);
  return runCommand(given, { library: library(), shelf, now: Date.now });
}

/** What other programs read stays as it is, whatever the terminal can show. */
function isPlain(given: Arguments): boolean {
  return (
    lookOf(given).ascii && given.as !== 'json' && given.as !== 'csv' && given.command !== 'schema'
  );
}

function plain({ out, err, code }: Outcome): Outcome {
  return { out: toAscii(out), err: toAscii(err), code };
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

/** A reader that has seen enough, such as head, closes the pipe: that is no error. */
function letReaderLeave(error: NodeJS.ErrnoException): void {
  if (error.code === 'EPIPE') process.exit();
  throw error;
}

function say({ out, err, code }: Outcome): void {
  process.stdout.on('error', letReaderLeave);
  process.stdout.write(out);
  process.stderr.write(err);
  process.exitCode = code;
}

await main();
