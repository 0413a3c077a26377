import type { ReadBuild } from '../files/read-build.js';
import { nearestWord } from '../measure/suggest.js';
import type { Plan } from '../plan/plan.js';
import type { BuildSoFar } from '../print/pages/pack.js';
import { atBench } from '../workbook/at-bench.js';
import { progressOf } from '../workbook/progress.js';
import type { Workbook } from '../workbook/workbook.js';
import type { Arguments } from './arguments.js';
import { PLANNER, SAVED_BEFORE, withRecipe } from './kept-build.js';
import type { Library } from './library.js';
import { EXIT, failed, type Outcome } from './outcome.js';
import { cannotStand, workOut } from './plan.js';

/** What is printed, and how its files are called; else what to tell. */
export type Subject =
  | {
      readonly ok: true;
      readonly plan: Plan;
      readonly build: BuildSoFar | undefined;
      /** How its files are called. */
      readonly base: string;
      /** To be told beside what was made; in most cases nothing. */
      readonly notice: string;
    }
  | { readonly ok: false; readonly outcome: Outcome };

type Found = {
  readonly library: Library;
  readonly build: (word: string) => ReadBuild;
};

/** The plan of a recipe or of a build by its name; a name that fits both is refused. */
export function subjectOf(given: Arguments, { library, build }: Found): Subject {
  const [word] = given.rest;
  if (word === undefined) return recipeSubject(given, library);
  const found = build(word);
  if (!found.ok) {
    if (found.why === 'unreadable') return stop([found.words], EXIT.files);
    if (!library.find(word).ok) return stop([nothingCalled(word, found.known)], EXIT.files);
    return recipeSubject(given, library);
  }
  if (library.find(word).ok) return stop([twoOfThatName(word, found.workbook)], EXIT.usage);
  return buildSubject(found, given);
}

type Known = Extract<ReadBuild, { readonly why: 'unknown' }>['known'];

function nothingCalled(word: string, known: Known): string {
  const ids = known.map(({ id }) => id);
  const near = nearestWord(word, ids);
  const builds = ids.length === 0 ? 'There are no builds yet.' : `Builds: ${ids.join(', ')}.`;
  const help =
    near === undefined ? `Recipes: see notchbook recipes. ${builds}` : `Did you mean ${near}?`;
  return `Neither a recipe, nor a recipe file, nor a build is called "${word}". ${help}`;
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
  return { ok: true, plan, build: undefined, base: plan.recipe, notice: '' };
}

type Saved = Extract<ReadBuild, { readonly ok: true }>;

function buildSubject({ workbook, savedBefore }: Saved, given: Arguments): Subject {
  if (given.sets.length > 0) {
    const words = '--set: the answers of a build are changed in the workbook, not here.';
    return stop([words], EXIT.usage);
  }
  const loaded = withRecipe(workbook);
  if (!loaded.ok) return stop([loaded.problem], EXIT.files);
  const display = given.displayGiven ? given.display : workbook.display;
  const progress = progressOf(workbook.events);
  const made = PLANNER.plan(loaded.recipe, workbook.answers, display, atBench(workbook, progress));
  if (!made.ok) return { ok: false, outcome: cannotStand(made.problems) };
  const build = { workbook, progress };
  const notice = savedBefore ? SAVED_BEFORE : '';
  return { ok: true, plan: made.plan, build, base: workbook.id, notice };
}

function stop(lines: readonly string[], code: number): Subject {
  return { ok: false, outcome: failed(lines, code) };
}
