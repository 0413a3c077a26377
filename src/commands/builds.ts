import { carryIn, carryName, carryOut } from '../files/carry.js';
import type { Shelf, ShelfEntry } from '../files/shelf.js';
import { makePlan } from '../plan/make-plan.js';
import { readRecipe } from '../recipe/read.js';
import { tableLines } from '../text/table.js';
import { atBench } from '../workbook/at-bench.js';
import { progressOf } from '../workbook/progress.js';
import { meetingOf } from '../workbook/same-build.js';
import type { Workbook } from '../workbook/workbook.js';
import { workbookId } from '../workbook/workbook-id.js';
import { aheadOf } from './ahead.js';
import type { Arguments } from './arguments.js';
import { EXIT, failed, fine, type Outcome } from './outcome.js';

/** `notchbook builds`: what is under way, by the names that the other commands take. */
export function buildsCommand({ width }: Arguments, shelf: Shelf): Outcome {
  const builds = shelf.list();
  if (builds.length === 0) return fine('There are no builds yet. "notchbook" begins one.\n');
  const columns = [{ title: 'Name' }, { title: 'Called' }, { title: 'How far', grow: true }];
  const rows = builds.map(entry => [entry.id, entry.name, standing(entry)]);
  return fine(`${tableLines(columns, rows, width).join('\n')}\n`);
}

function standing({ trouble, stepsDone, stepsInAll, putAway, example }: ShelfEntry): string {
  if (trouble !== undefined) return `can't be opened: ${trouble}`;
  const far = `${stepsDone} of ${stepsInAll} steps`;
  const more = [putAway ? 'put away' : '', example ? 'the example' : ''].filter(it => it !== '');
  return [far, ...more].join(', ');
}

/** `notchbook export BUILD --to FILE`: the whole build as one file. */
export function exportCommand(given: Arguments, shelf: Shelf, nowMs: number): Outcome {
  const [id] = given.rest;
  if (id === undefined) return failed([`Which build? ${known(shelf)}`], EXIT.usage);
  const looked = shelf.look(id);
  if (!looked.ok) return failed([`${looked.words} ${known(shelf)}`], EXIT.files);
  const out = carryOut(looked.workbook, given.to ?? carryName(looked.workbook), nowMs);
  if (!out.ok) return failed([out.words], EXIT.files);
  return fine(`${out.file}\nOn the other machine: notchbook import, and this file.\n`);
}

function known(shelf: Shelf): string {
  const ids = shelf.list().map(({ id }) => id);
  return ids.length === 0 ? 'There are none yet.' : `There are: ${ids.join(', ')}.`;
}

/** `notchbook import FILE`: a build from another machine, put on the shelf here. */
export function importCommand({ rest: [file] }: Arguments, shelf: Shelf): Outcome {
  if (file === undefined) {
    return failed(['Which file? Name the one that "notchbook export" has written.'], EXIT.usage);
  }
  const incoming = carryIn(file);
  if (!incoming.ok) return failed([incoming.words], EXIT.files);
  const { workbook } = incoming;
  const there = shelf.look(workbook.id);
  if (!there.ok) return put(workbook, shelf);
  switch (meetingOf(workbook, there.workbook)) {
    case 'same':
      return fine(`"${workbook.name}" is here already, just as it is in the file.\n`);
    case 'behind':
      return fine(`"${workbook.name}" is further on here than in the file; it stays as it is.\n`);
    case 'further on':
      return goneOn(workbook, shelf);
    case 'parted':
      return put(beside(workbook, shelf, `${workbook.name} (from the file)`), shelf);
    case 'another build':
      return put(beside(workbook, shelf, workbook.name), shelf);
  }
}

/** Under an id of its own, so that nothing here is written over. */
function beside(workbook: Workbook, shelf: Shelf, name: string): Workbook {
  const taken = new Set(shelf.list().map(({ id }) => id));
  return { ...workbook, id: workbookId(name, taken), name };
}

function put(workbook: Workbook, shelf: Shelf): Outcome {
  const outcome = shelf.create(workbook, aheadIn(workbook));
  shelf.release();
  return outcome.ok ? taken(workbook) : failed([outcome.words], EXIT.files);
}

function goneOn(workbook: Workbook, shelf: Shelf): Outcome {
  const opened = shelf.load(workbook.id);
  if (!opened.ok) return failed([opened.words], EXIT.files);
  const outcome = shelf.save(workbook, aheadIn(workbook));
  shelf.release();
  return outcome.ok ? taken(workbook) : failed([outcome.words], EXIT.files);
}

function taken({ id, name }: Workbook): Outcome {
  return fine(`"${name}" is on the shelf now, as ${id}. "notchbook" opens it.\n`);
}

/** A recipe that this program can't plan is opened with its own words; the list needs no plan for it. */
function aheadIn(workbook: Workbook) {
  const { recipeText, answers, display, events } = workbook;
  const read = readRecipe(recipeText);
  const progress = progressOf(events);
  const made = read.ok
    ? makePlan(read.recipe, answers, display, atBench(workbook, progress))
    : undefined;
  return aheadOf(made?.ok ? made.plan.steps : [], progress);
}
