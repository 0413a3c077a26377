import type { MadeFile } from '../files/put-files.js';
import type { ReadBuild } from '../files/read-build.js';
import type { Parsed } from '../measure/parsed.js';
import { nearestWord } from '../measure/suggest.js';
import { makePlan } from '../plan/make-plan.js';
import type { Plan } from '../plan/plan.js';
import { type BuildSoFar, PAGE_NAMES, type PageName } from '../print/pages/pack.js';
import { printFiles } from '../print/print-files.js';
import { PAPERS } from '../print/sheet/paper.js';
import { readRecipe } from '../recipe/read.js';
import { atBench } from '../workbook/at-bench.js';
import { progressOf } from '../workbook/progress.js';
import type { Workbook } from '../workbook/workbook.js';
import type { Arguments } from './arguments.js';
import type { Library } from './library.js';
import { EXIT, failed, fine, type Outcome } from './outcome.js';
import { cannotStand, workOut } from './plan.js';

/** What the command needs of the disk and of the clock. */
export type PrintMeans = {
  readonly library: Library;
  readonly build: (word: string) => ReadBuild;
  readonly typeface: () => { readonly plain: Uint8Array; readonly bold: Uint8Array };
  readonly put: (folder: string, files: readonly MadeFile[]) => Parsed<string>;
  readonly nowMs: number;
};

/** `notchbook print RECIPE|WORKBOOK --to FOLDER`: the plan on paper, and as files for other programs. */
export async function printCommand(given: Arguments, means: PrintMeans): Promise<Outcome> {
  const { to, paper } = given;
  const pages = pagesOf(given.pages);
  if (!pages.ok) return failed([pages.problem], EXIT.usage);
  if (to === undefined || to.trim() === '') {
    return failed(
      ['Where to? Name a folder: --to FOLDER. It is made where it is missing.'],
      EXIT.usage,
    );
  }
  const subject = subjectOf(given, means);
  if (!subject.ok) return subject.outcome;
  const { plan, build, base } = subject;
  const files = await printFiles(
    {
      plan,
      build,
      pages: pages.names,
      paper: PAPERS[paper],
      fonts: means.typeface(),
      madeAtMs: means.nowMs,
    },
    base,
  );
  const put = means.put(to, files);
  if (!put.ok) return failed([`${put.problem} ${put.hint}`], EXIT.files);
  return fine(`${madeWords(put.value, files)}\n`);
}

type Pages =
  | { readonly ok: true; readonly names: readonly PageName[] }
  | { readonly ok: false; readonly problem: string };

/** All pages, or those named with commas between, in the order of the paper. */
function pagesOf(asked: string | undefined): Pages {
  if (asked === undefined) return { ok: true, names: PAGE_NAMES };
  const words = asked.split(',').map(word => word.trim().toLowerCase());
  const unknown = words.find(word => !PAGE_NAMES.some(name => name === word));
  if (unknown === undefined)
    return { ok: true, names: PAGE_NAMES.filter(it => words.includes(it)) };
  const near = nearestWord(unknown, PAGE_NAMES);
  const help = near === undefined ? `Pages: ${PAGE_NAMES.join(', ')}.` : `Did you mean ${near}?`;
  return { ok: false, problem: `--pages ${asked}: there is no page "${unknown}". ${help}` };
}

type Subject =
  | {
      readonly ok: true;
      readonly plan: Plan;
      readonly build: BuildSoFar | undefined;
      /** How its files are called. */
      readonly base: string;
    }
  | { readonly ok: false; readonly outcome: Outcome };

function subjectOf(given: Arguments, { library, build }: PrintMeans): Subject {
  const [word] = given.rest;
  if (word === undefined) return recipeSubject(given, library);
  const found = build(word);
  if (!found.ok) {
    if (found.why === 'unreadable') return stop([found.words], EXIT.files);
    return recipeSubject(given, library);
  }
  if (library.find(word).ok) return stop([twoOfThatName(word, found.workbook)], EXIT.usage);
  return buildSubject(found.workbook, given);
}

function twoOfThatName(word: string, { id, name }: Workbook): string {
  const other = name === word ? id : name;
  const called =
    other === word ? 'it can only be printed once the other has another name' : `as "${other}"`;
  return `Both a recipe and a build of yours are called "${word}". Name the recipe by the path of its file, the build ${called}.`;
}

function recipeSubject(given: Arguments, library: Library): Subject {
  const worked = workOut(given, library, given.rest);
  if (!worked.ok) return worked;
  const { plan } = worked;
  return { ok: true, plan, build: undefined, base: plan.recipe };
}

/** The recipe comes out of the workbook: a newer one in the program must not change a build. */
function buildSubject(workbook: Workbook, given: Arguments): Subject {
  if (given.sets.length > 0) {
    const words = '--set: the answers of a build are changed in the workbook, not here.';
    return stop([words], EXIT.usage);
  }
  const read = readRecipe(workbook.recipeText);
  if (!read.ok) {
    return stop([`The recipe kept in "${workbook.name}" can't be read.`], EXIT.files);
  }
  const display = given.displayGiven ? given.display : workbook.display;
  const progress = progressOf(workbook.events);
  const made = makePlan(read.recipe, workbook.answers, display, atBench(progress));
  if (!made.ok) return { ok: false, outcome: cannotStand(made.problems) };
  const build = { workbook, progress };
  return { ok: true, plan: made.plan, build, base: workbook.id };
}

function stop(lines: readonly string[], code: number): Subject {
  return { ok: false, outcome: failed(lines, code) };
}

const NO_DATES =
  'No calendar, since nothing has a date yet: --set first_day=2026-12-04 gives every session its day.';

function madeWords(folder: string, files: readonly MadeFile[]): string {
  return [
    `Made in ${folder}:`,
    ...files.filter(({ name }) => !name.includes('/')).map(({ name }) => `  ${name}`),
    'Print the PDF at 100 %, not fitted to the page.',
    ...(files.some(({ name }) => name.endsWith('.ics')) ? [] : [NO_DATES]),
  ].join('\n');
}
