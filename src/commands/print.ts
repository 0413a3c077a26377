import type { MadeFile } from '../files/put-files.js';
import type { ReadBuild } from '../files/read-build.js';
import type { Parsed } from '../measure/parsed.js';
import { nearestWord } from '../measure/suggest.js';
import { type BuildSoFar, PAGE_NAMES, type PageName } from '../print/pages/pack.js';
import { printFiles } from '../print/print-files.js';
import { PAPERS } from '../print/sheet/paper.js';
import { count } from '../text/plural.js';
import type { Arguments } from './arguments.js';
import type { Library } from './library.js';
import { EXIT, failed, fine, type Outcome } from './outcome.js';
import { subjectOf } from './print-subject.js';

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
  const { plan, build, base, notice } = subject;
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
  return { ...fine(`${madeWords(put.value, files, build)}\n`), err: notice };
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

function madeWords(
  folder: string,
  files: readonly MadeFile[],
  build: BuildSoFar | undefined,
): string {
  const dated = files.some(({ name }) => name.endsWith('.ics'));
  const how =
    build === undefined
      ? '--set first_day=2026-12-04 gives every session its day'
      : 'answer the question for the first day to give every session its own';
  return [
    `Made in ${folder}:`,
    ...files.filter(({ name }) => !name.includes('/')).map(({ name }) => `  ${name}`),
    `  drawings/, ${count(files.filter(({ name }) => name.includes('/')).length, 'SVG drawing')}`,
    'Print the PDF at 100 %, not fitted to the page.',
    ...(dated ? [] : [`No calendar, since nothing has a date yet: ${how}.`]),
  ].join('\n');
}
